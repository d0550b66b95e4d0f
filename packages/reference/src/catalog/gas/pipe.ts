/**
 * Pipe and tube of the fuel-gas trade that has a bore: its sizes by trade name, with inside diameter and roughness.
 *
 * Inside diameters are those the code's capacity tables print and are computed with. Copper's is the smaller of
 * types K and L, as in the tables. Polyethylene's is that of its printed SDR.
 */
import { quantity, type Source } from '@firstfire/engine';

const { INCH } = quantity;

export interface PipeSize {
  /** Trade size, unique within its pipe: `3/4`. */
  readonly id: string;
  /** m. */
  readonly insideDiameter: number;
  /** m, where the trade names the tube by it. */
  readonly outsideDiameter?: number;
  /** Standard dimension ratio of plastic pipe. */
  readonly sdr?: number;
}

export interface Pipe {
  readonly id: 'steel-schedule-40' | 'copper-tube' | 'polyethylene';
  /** Rising in inside diameter. */
  readonly sizes: readonly PipeSize[];
  readonly source: Source;
  /** Absolute roughness of new pipe, m. */
  readonly roughness: number;
  readonly roughnessSource: Source;
}

const ROUGHNESS_SOURCE: Source = {
  document: 'Moody, Friction Factors for Pipe Flow (1944)',
  at: 'commercial steel 0.00015 ft; drawn tubing 0.000005 ft',
  known: 'from memory',
};

/** Builds a size from inches. */
function size(id: string, inside: number, more?: { outside?: number; sdr?: number }): PipeSize {
  return {
    id,
    insideDiameter: inside * INCH,
    ...(more?.outside === undefined ? {} : { outsideDiameter: more.outside * INCH }),
    ...(more?.sdr === undefined ? {} : { sdr: more.sdr }),
  };
}

/** Schedule 40 steel; 1/4 and 3/8 in stand in older tables and in ASME B36.10M only (from memory). */
export const STEEL_SCHEDULE_40: Pipe = {
  id: 'steel-schedule-40',
  roughness: 0.00015 * quantity.FOOT,
  roughnessSource: ROUGHNESS_SOURCE,
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Tables 402.4(3) and A.2.2; 1/4 and 3/8 in ASME B36.10M, from memory',
    known: 'read in a public copy',
  },
  sizes: [
    size('1/4', 0.364),
    size('3/8', 0.493),
    size('1/2', 0.622),
    size('3/4', 0.824),
    size('1', 1.049),
    size('1-1/4', 1.38),
    size('1-1/2', 1.61),
    size('2', 2.067),
    size('2-1/2', 2.469),
    size('3', 3.068),
    size('4', 4.026),
    size('5', 5.047),
    size('6', 6.065),
    size('8', 7.981),
    size('10', 10.02),
    size('12', 11.94),
  ],
};

/** Semirigid copper tube, types K and L, by nominal size; ACR tube of the same outside diameter is one size larger. */
export const COPPER_TUBE: Pipe = {
  id: 'copper-tube',
  roughness: 0.000005 * quantity.FOOT,
  roughnessSource: ROUGHNESS_SOURCE,
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Table 402.4(11)',
    known: 'read in a public copy',
  },
  sizes: [
    size('1/4', 0.305, { outside: 0.375 }),
    size('3/8', 0.402, { outside: 0.5 }),
    size('1/2', 0.527, { outside: 0.625 }),
    size('5/8', 0.652, { outside: 0.75 }),
    size('3/4', 0.745, { outside: 0.875 }),
    size('1', 0.995, { outside: 1.125 }),
    size('1-1/4', 1.245, { outside: 1.375 }),
    size('1-1/2', 1.481, { outside: 1.625 }),
    size('2', 1.959, { outside: 2.125 }),
  ],
};

/** Polyethylene pipe, for buried outdoor runs. */
export const POLYETHYLENE: Pipe = {
  id: 'polyethylene',
  roughness: 0.000005 * quantity.FOOT,
  roughnessSource: ROUGHNESS_SOURCE,
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Table 402.4(20)',
    known: 'read in a public copy',
  },
  sizes: [
    size('1/2', 0.66, { sdr: 9 }),
    size('3/4', 0.86, { sdr: 11 }),
    size('1', 1.077, { sdr: 11 }),
    size('1-1/4', 1.328, { sdr: 10 }),
    size('1-1/2', 1.554, { sdr: 11 }),
    size('2', 1.943, { sdr: 11 }),
    size('3', 2.864, { sdr: 11 }),
    size('4', 3.682, { sdr: 11 }),
  ],
};

/** Every pipe that has a bore. Corrugated tubing stands in `csst.ts`. */
export const PIPES: readonly Pipe[] = [STEEL_SCHEDULE_40, COPPER_TUBE, POLYETHYLENE];

/** A size by its trade name, if the pipe is made in it. */
export function pipeSize(pipe: Pipe, id: string): PipeSize | undefined {
  return pipe.sizes.find((one) => one.id === id);
}
