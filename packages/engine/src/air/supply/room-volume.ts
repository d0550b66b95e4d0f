/**
 * Volume of the room that gives a burner its air without openings.
 *
 *     V = 50 ft3·I/(1000 Btu/h)                      standard method
 *     V = (21/ACH)·I/1000, (15/ACH) fan-assisted     known infiltration rate, ACH at most 0.60
 *
 * Source: IFGC 304.5.1 and 304.5.2, equations 3-1 and 3-2 (read as NFPA 54-2012 9.3.2 in the 2013 California Plumbing
 * Code; the coefficients confirmed by IFGC Table E-1).
 * Range: input 0 to 10 MW, 0.05 to 0.60 air changes an hour. Errors: range issues of `evaluate`.
 * Worked example: 140,000 Btu/h, standard → 7,000 ft3; 100,000 Btu/h fan-assisted at 0.40 ACH → 3,750 ft3.
 */
import { BTU, CUBIC_FOOT, HOUR } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

const THOUSAND_BTU = (1000 * BTU) / HOUR;

export const ROOM_VOLUME_SOURCE: Source = {
  document: 'International Fuel Gas Code',
  at: '304.5.1 and 304.5.2, as NFPA 54-2012 9.3.2 in the 2013 California Plumbing Code',
  known: 'read in a public copy',
};

const heatInput = { symbol: 'I', kind: 'heat-rate', min: 0, max: 1e7 } as const;

export interface RoomBurners {
  /** I of all burners in the room, W. */
  readonly heatInput: number;
}

/** Room volume by the standard method, m3. */
export const standardRoomVolume: Formula<RoomBurners> = {
  id: 'air.room-volume-standard',
  equation: 'V = 50 ft3·I/(1000 Btu/h)',
  inputs: { heatInput },
  result: { symbol: 'V', kind: 'volume' },
  source: ROOM_VOLUME_SOURCE,
  kernel: (x) => (50 * CUBIC_FOOT * x.heatInput) / THOUSAND_BTU,
};

export interface LeakyRoom extends RoomBurners {
  /** ACH, air changes an hour. */
  readonly airChanges: number;
  /** 21, or 15 for fan-assisted burners, ft3·ACH a thousand Btu/h. */
  readonly coefficient: number;
}

export const INFILTRATION_COEFFICIENT = { natural: 21, fanAssisted: 15 } as const;

/** Room volume for a known infiltration rate, m3. */
export const infiltrationRoomVolume: Formula<LeakyRoom> = {
  id: 'air.room-volume-infiltration',
  equation: 'V = (c/ACH)·I/(1000 Btu/h)',
  inputs: {
    heatInput,
    airChanges: { symbol: 'ACH', kind: 'ratio', min: 0.05, max: 0.6 },
    coefficient: { symbol: 'c', kind: 'ratio', min: 15, max: 21 },
  },
  result: { symbol: 'V', kind: 'volume' },
  source: ROOM_VOLUME_SOURCE,
  kernel: (x) => ((x.coefficient / x.airChanges) * CUBIC_FOOT * x.heatInput) / THOUSAND_BTU,
};
