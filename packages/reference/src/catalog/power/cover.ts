/** Earth that must lie over buried wiring. */
import { quantity, type Source } from '@firstfire/engine';

export const COVER_SOURCE: Source = {
  document: 'National Electrical Code 2011',
  at: 'Table 300.5, 0 to 600 V, read in the 2013 California Electrical Code',
  known: 'read in a public copy',
};

/** How it is buried. */
export const BURIAL_METHODS = [
  'direct-buried cable',
  'rigid metal conduit',
  'intermediate metal conduit',
  'nonmetallic raceway',
] as const;
export type BurialMethod = (typeof BURIAL_METHODS)[number];

/** What lies above it. */
export const BURIAL_PLACES = [
  'yard',
  'trench under 2 in of concrete',
  'under a building',
  'slab of 4 in without traffic',
  'street, driveway or car park',
  'driveway of a dwelling',
  'airport runway',
] as const;
export type BurialPlace = (typeof BURIAL_PLACES)[number];

/** Columns of the table: cable, metal conduit, plastic raceway, protected 120 V dwelling circuit, 30 V control. */
type Column = 0 | 1 | 2 | 3 | 4;
type Row = readonly [number, number, number, number, number];

/** Inches. Of a slab the two last columns allow 4 in a raceway and 6 without one; the latter stands here. */
const INCHES: Readonly<Record<BurialPlace, Row>> = {
  yard: [24, 6, 18, 12, 6],
  'trench under 2 in of concrete': [18, 6, 12, 6, 6],
  'under a building': [0, 0, 0, 0, 0],
  'slab of 4 in without traffic': [18, 4, 4, 6, 6],
  'street, driveway or car park': [24, 24, 24, 24, 24],
  'driveway of a dwelling': [18, 18, 18, 12, 18],
  'airport runway': [18, 18, 18, 18, 18],
};

const SLAB_RACEWAY = 4;

const COLUMN: Readonly<Record<BurialMethod, Column>> = {
  'direct-buried cable': 0,
  'rigid metal conduit': 1,
  'intermediate metal conduit': 1,
  'nonmetallic raceway': 2,
};

export interface Burial {
  readonly method: BurialMethod;
  readonly place: BurialPlace;
  /** A dwelling's branch circuit of at most 120 V and 20 A with ground-fault protection, or 30 V control wiring. */
  readonly relief?: 'protected dwelling circuit' | 'control of 30 V';
}

/** Least cover, m: of the method's column, or of the relief's where that is less. */
export function coverLeast({ method, place, relief }: Burial): number {
  const row = INCHES[place];
  const own = row[COLUMN[method]];
  if (relief === undefined) return own * quantity.INCH;
  const inSlabRaceway = place === 'slab of 4 in without traffic' && method !== 'direct-buried cable';
  const eased = inSlabRaceway ? SLAB_RACEWAY : row[relief === 'control of 30 V' ? 4 : 3];
  return Math.min(own, eased) * quantity.INCH;
}

export const NEAR_POOL_SOURCE: Source = {
  document: 'National Electrical Code 2011',
  at: 'Table 680.10, read in the 2013 California Electrical Code',
  known: 'read in a public copy',
};

const NEAR_POOL_INCHES: Readonly<Partial<Record<BurialMethod, number>>> = {
  'rigid metal conduit': 6,
  'intermediate metal conduit': 6,
  'nonmetallic raceway': 18,
};

/** Least cover under a pool or within 5 ft of it, m; undefined for a method the table does not allow there. */
export function coverNearPool(method: BurialMethod): number | undefined {
  const inches = NEAR_POOL_INCHES[method];
  return inches === undefined ? undefined : inches * quantity.INCH;
}
