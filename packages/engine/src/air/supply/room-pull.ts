/**
 * How far fans and burners pull the air pressure of a room below that outdoors, through the openings it has.
 *
 *     Δp = ρ/2·(Q/(Cd·A))²        Cd = 0.61
 *
 * Cd is that of a sharp-edged orifice; louvres and long ducts pass less and pull more. Wind and warm air rising in
 * the building are not in it: a real room can stand a few pascals lower still, and only a gauge across the door with
 * every fan running tells.
 *
 * Source: Bernoulli with the contraction of a sharp-edged orifice; Cd from memory (0.60 to 0.65 in the handbooks).
 * Range: flow 0 to 100 m3/s, openings 1 cm2 to 100 m2, air 0.5 to 1.6 kg/m3. Errors: range issues of `evaluate`.
 * Worked example: 1 m3/s through 0.5 m2 of air at 1.2 kg/m3 → 6.45 Pa.
 */
import type { Formula, Source } from '../../trace/index.ts';

export const ORIFICE_COEFFICIENT = 0.61;

/**
 * Cracks of a shut room, m2 for each m2 of walls and ceiling: about half of what tight houses are found with, so that
 * a room without openings is not given air it may not have. Common practice, no source.
 */
export const LEAST_CRACKS = 5e-5;

export const ROOM_PULL_SOURCE: Source = {
  document: 'Orifice law',
  at: 'coefficient 0.61 of a sharp edge, from memory',
  known: 'physics',
};

export interface RoomFlow {
  /** Q through the openings, m3/s. */
  readonly flow: number;
  /** A, free, all openings to outdoors together, m2. */
  readonly area: number;
  /** ρ of the outdoor air, kg/m3. */
  readonly density: number;
}

/** Pressure of the room below that outdoors, Pa. */
export const roomPull: Formula<RoomFlow> = {
  id: 'air.room-pull',
  equation: 'Δp = ρ/2·(Q/(Cd·A))²',
  inputs: {
    flow: { symbol: 'Q', kind: 'volume-flow', min: 0, max: 100 },
    area: { symbol: 'A', kind: 'area', min: 1e-4, max: 100 },
    density: { symbol: 'ρ', kind: 'density', min: 0.5, max: 1.6 },
  },
  result: { symbol: 'Δp', kind: 'pressure-difference' },
  source: ROOM_PULL_SOURCE,
  kernel: (x) => (x.density / 2) * (x.flow / (ORIFICE_COEFFICIENT * x.area)) ** 2,
};
