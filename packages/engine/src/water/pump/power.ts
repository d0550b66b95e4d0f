/**
 * Power of a pump: what the water gains, what the shaft takes, what the wire carries.
 *
 *     P,water = ρ·g·Q·H        P,shaft = P,water/η,pump        P,wire = P,shaft/(η,motor·η,drive)
 *
 * How sources disagree: the trade divides gpm·ft by 3960, the federal pool-pump test by 3956; both assume cold water
 * and differ by 0.1 %. Density is an argument here.
 *
 * Source: energy balance; 10 CFR 431 subpart Y; Crane TP-410, Example 7-34. Range: efficiencies above 0 to 1.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 700 gpm at 428 ft, 62.364 lb/ft3, η 0.707 → 107.1 hp at the shaft; η 0.95·0.96 → 117.4 hp.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import { type Formula, type Recorder, type Source, traced } from '../../trace/index.ts';
import { DENSITY, EFFICIENCY, FORWARD_FLOW } from '../variables.ts';

const SOURCE: Source = { document: 'Energy balance of a pump', known: 'physics' };
const HEAD_OF_PUMP = { symbol: 'H', kind: 'head', min: 0, max: 1e4 } as const;

export interface PumpDuty {
  /** Q, m3/s. */
  readonly flow: number;
  /** H, m. */
  readonly head: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** Power the water gains, W. */
export const hydraulicPower: Formula<PumpDuty> = {
  id: 'water.hydraulic-power',
  equation: 'P = ρ·g·Q·H',
  inputs: { flow: FORWARD_FLOW, head: HEAD_OF_PUMP, density: DENSITY },
  result: { symbol: 'P', kind: 'power' },
  source: SOURCE,
  kernel: (x) => x.density * STANDARD_GRAVITY * x.flow * x.head,
};

export interface DrivenPump extends PumpDuty {
  /** η of the pump, or of pump, motor and drive together for the power at the wire. */
  readonly efficiency: number;
}

/** Power taken at the shaft, W; with the efficiency of the whole set, the power at the wire. */
export const drivePower: Formula<DrivenPump> = {
  id: 'water.drive-power',
  equation: 'P = ρ·g·Q·H/η',
  inputs: { flow: FORWARD_FLOW, head: HEAD_OF_PUMP, density: DENSITY, efficiency: EFFICIENCY },
  result: { symbol: 'P', kind: 'power' },
  source: SOURCE,
  kernel: (x, recorder?: Recorder) => {
    const { flow, head, density } = x;
    return traced(hydraulicPower, { flow, head, density }, recorder) / x.efficiency;
  },
};
