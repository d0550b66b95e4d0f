/**
 * Fittings and valves of water pipe as Crane gives them: an equivalent length over diameter (L/D), which times the
 * friction factor fT of clean steel in complete turbulence is the loss coefficient K.
 *
 * Handbooks differ by 20 to 50 % for one and the same fitting (see `MINOR_LOSS_TABLES`): a head loss made of fittings
 * is known no better. Crane's is followed because its K falls with size, as measured K does.
 */
import { type Source, water } from '@firstfire/engine';

const READ: Source = water.CRANE_SOURCE;
const RECALLED: Source = { ...READ, known: 'from memory' };

export interface WaterFitting {
  readonly id: WaterFittingId;
  readonly lengthOverDiameter: number;
  readonly source: Source;
}

const TABLE = [
  ['gate-valve', 8, READ],
  ['globe-valve', 340, READ],
  ['angle-valve-150', 150, READ],
  ['angle-valve-55', 55, READ],
  ['ball-valve', 3, READ],
  ['butterfly-valve', 45, READ],
  ['plug-valve', 18, READ],
  ['three-way-plug-through', 30, READ],
  ['three-way-plug-branch', 90, READ],
  ['swing-check-100', 100, READ],
  ['swing-check-50', 50, RECALLED],
  ['elbow-90', 30, READ],
  ['elbow-45', 16, READ],
  ['elbow-90-long', 16, READ],
  ['return-bend', 50, READ],
  ['tee-through', 20, READ],
  ['tee-branch', 60, READ],
  ['mitre-90', 60, READ],
  ['bend-90-r1', 20, READ],
  ['bend-90-r1.5', 14, RECALLED],
  ['bend-90-r2', 12, READ],
  ['bend-90-r3', 12, READ],
  ['bend-90-r4', 14, READ],
  ['bend-90-r6', 17, READ],
] as const;

export type WaterFittingId = (typeof TABLE)[number][0];

/** Fittings by L/D. */
export const WATER_FITTINGS: readonly WaterFitting[] = TABLE.map(([id, lengthOverDiameter, source]) => ({
  id,
  lengthOverDiameter,
  source,
}));

/** Ends of a pipe in still water, by K itself. */
export const PIPE_ENDS = {
  'entrance-flush': 0.5,
  'entrance-inward': 0.78,
  exit: 1,
} as const;

export type PipeEndId = keyof typeof PIPE_ENDS;

/**
 * K of a fitting or a pipe's end, referred to the velocity in the pipe.
 * `insideDiameter` (m) is that of the Schedule 40 pipe of the fitting's size. Undefined for a name not in the tables.
 * Source: Crane TP-410 (1986), pages. Example: `elbow-90` in 2 in pipe (2.067 in) → 0.57.
 */
export function fittingK(id: string, insideDiameter: number): number | undefined {
  if (Object.hasOwn(PIPE_ENDS, id)) return PIPE_ENDS[id as PipeEndId];
  const fitting = WATER_FITTINGS.find((one) => one.id === id);
  if (fitting === undefined) return undefined;
  return fitting.lengthOverDiameter * water.completeTurbulence.kernel({ insideDiameter });
}
