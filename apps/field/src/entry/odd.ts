/** Odd, not impossible: a reading far from where it usually lies, and what may have been meant. */
import { quantity } from '@firstfire/engine';
import { keysOf, unitText } from './keys.ts';
import type { FieldAt, Understood } from './understood.ts';
import { type Band, USUAL_RANGES } from './usual-ranges.ts';

export interface Odd {
  /** The same value in a unit in which it can be judged, where that is another one. */
  readonly also?: { readonly si: number; readonly unit: string };
  /** A slip of the decimal or of the unit that would lie where it usually does. */
  readonly meant?: string;
}

type Read = Extract<Understood, { state: 'read' }>;

const SLIPS = [0.1, 10, 0.01, 100, 0.001, 1000];

/** Undefined where nothing is odd, or nobody knows what would be usual. */
export function oddity({ collection, field }: FieldAt, kind: quantity.Kind, read: Read): Odd | undefined {
  const bands = USUAL_RANGES[`${collection}.${field}`];
  if (bands === undefined || bands.some((band) => lies(read.si, band, kind))) return undefined;
  const [first] = bands;
  const used = read.reading.unit ?? '1';
  const other = bands.find(([, , unit]) => unit !== used)?.[2] ?? otherUnit(kind, used);
  const meant = slipOf(read, bands, kind);
  return {
    ...(first === undefined || other === undefined ? {} : { also: { si: read.si, unit: other } }),
    ...(meant === undefined ? {} : { meant }),
  };
}

function lies(si: number, [low, high, unit]: Band, kind: quantity.Kind): boolean {
  const slack = 1e-9 * Math.abs(si);
  return si >= quantity.si(low, unit, kind) - slack && si <= quantity.si(high, unit, kind) + slack;
}

const PRESSURES: Readonly<Record<string, string>> = {
  'in w.c.': 'psi',
  psi: 'in w.c.',
  kPa: 'in w.c.',
  Pa: 'in w.c.',
  mbar: 'in w.c.',
};

function otherUnit(kind: quantity.Kind, used: string): string | undefined {
  return kind === 'pressure' || kind === 'pressure-difference' ? PRESSURES[used] : undefined;
}

function slipOf({ reading }: Read, bands: readonly Band[], kind: quantity.Kind): string | undefined {
  const { value, unit = '1' } = reading;
  if (typeof value !== 'number' || value === 0) return undefined;
  // A wrong unit key: the same figure in another unit.
  for (const other of [...bands.map((band) => band[2]), ...keysOf(kind, unit).units]) {
    const read = quantity.parseQuantity(`${value} ${other}`, kind);
    if (!read.ok || read.value.unit === unit) continue;
    if (bands.some((band) => lies(read.value.si, band, kind))) return written(value, other, kind);
  }
  for (const slip of SLIPS) {
    const slipped = value * slip;
    if (bands.some((band) => lies(quantity.si(slipped, unit, kind), band, kind)))
      return written(shifted(value, slip), unit, kind);
  }
  return undefined;
}

/** The figure keeps its digits when its decimal moves: 70 → 7.0. */
function shifted(value: number, slip: number): string {
  const digits = String(value).replace(/^-?0*\.?0*|\D/g, '').length;
  return slip < 1
    ? (value * slip).toPrecision(Math.max(1, Math.min(digits, 6)))
    : String(Number((value * slip).toPrecision(12)));
}

function written(value: number | string, unit: string, kind: quantity.Kind): string {
  return unit === '1' ? String(value) : `${value} ${unitText(unit, kind)}`;
}
