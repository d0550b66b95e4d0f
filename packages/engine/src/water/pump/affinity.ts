/**
 * A pump at another speed: the affinity laws.
 *
 *     Q ~ s        H ~ s²        P ~ s³        s = n2/n1
 *
 * They move a point of the curve to the point of like flow at the new speed, which is not in general where the system
 * will run: with a static lift, or a check valve's spring, find the new running point on the network.
 *
 * How sources disagree: shaft power at half speed falls a little less than the cube says, because bearings and motor
 * losses do not; makers' curves for variable-speed pumps show the wire power and should be preferred.
 *
 * Source: Crane TP-410, Example 7-33. Range: speed ratio from 0 to 3.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 400 gpm, 126 ft, 17.5 hp at 3500 rpm → at 1700 rpm 194.3 gpm, 29.73 ft, 2.005 hp.
 */
import type { Formula, Source } from '../../trace/index.ts';
import { FORWARD_FLOW, SPEED_RATIO } from '../variables.ts';

const SOURCE: Source = { document: 'Crane TP-410', at: 'Example 7-33', known: 'read in a public copy' };
const HEAD_OF_PUMP = { symbol: 'H', kind: 'head', min: 0, max: 1e4 } as const;
const POWER = { symbol: 'P', kind: 'power', min: 0, max: 1e8 } as const;

export interface FlowAtSpeed {
  /** m3/s. */
  readonly flow: number;
  readonly speedRatio: number;
}

/** Flow at the new speed, m3/s. */
export const affinityFlow: Formula<FlowAtSpeed> = {
  id: 'water.affinity-flow',
  equation: 'Q2 = s·Q1',
  inputs: { flow: FORWARD_FLOW, speedRatio: SPEED_RATIO },
  result: FORWARD_FLOW,
  source: SOURCE,
  kernel: (x) => x.flow * x.speedRatio,
};

export interface HeadAtSpeed {
  /** m. */
  readonly head: number;
  readonly speedRatio: number;
}

/** Head at the new speed, m. */
export const affinityHead: Formula<HeadAtSpeed> = {
  id: 'water.affinity-head',
  equation: 'H2 = s²·H1',
  inputs: { head: HEAD_OF_PUMP, speedRatio: SPEED_RATIO },
  result: HEAD_OF_PUMP,
  source: SOURCE,
  kernel: (x) => x.head * x.speedRatio ** 2,
};

export interface PowerAtSpeed {
  /** W. */
  readonly power: number;
  readonly speedRatio: number;
}

/** Power at the new speed, W. */
export const affinityPower: Formula<PowerAtSpeed> = {
  id: 'water.affinity-power',
  equation: 'P2 = s³·P1',
  inputs: { power: POWER, speedRatio: SPEED_RATIO },
  result: POWER,
  source: SOURCE,
  kernel: (x) => x.power * x.speedRatio ** 3,
};
