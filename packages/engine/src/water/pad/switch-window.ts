/**
 * The window of a water-pressure switch: where its making point may stand so that it proves flow.
 *
 *     open at rest:   set − differential ≥ rest + margin
 *     made when on:   set ≤ running − margin
 *
 * A pressure switch does not see flow; it sees pressure. At rest it stands under the water between it and the highest
 * open basin: 0.433 psi a foot when the heater is below, none when it is above (a heater above the water may hold a
 * vacuum or drain, so that the atmosphere is the worst it can see). Running, it sees what the heater and the returns
 * need, least at the slowest heating speed and with the dirtiest filter. Where the two leave no room, no setting is
 * right, and only a true flow switch can serve.
 *
 * Even inside the window it may stay made at a flow under the heater's least, because pressure falls with the square
 * of flow: `flowWhenOpens` says at which flow it lets go when the pump slows.
 *
 * Source: hydrostatics and the pad's solution. That the switch needs adjusting when the heater stands above or below
 * the pool is common practice, no source.
 * Range: a pad with heaters; differential and margin from 0.
 * Errors: a state that cannot be solved is an issue; so is a bank whose number is not in the pad.
 *
 * Worked example: heater 5 ft under the pool: at rest 2.16 psi; running 3.5 psi, differential 0.5, margin 0.25 →
 * 2.91 to 3.25 psi.
 */
import { brentRoot } from '../../numerics/index.ts';
import { fail, type Issue, ok, type Result, variableIssue } from '../../trace/index.ts';
import { staticPressure } from '../pool/static-head.ts';
import { propertiesAt } from '../water-at.ts';
import { openingOf, type Pad } from './pad.ts';
import { solvePad } from './solution.ts';
import type { BasinBranch, PadHeater, PadSpec, PadState } from './spec.ts';
import { switchHighest, switchLowest } from './switch-limits.ts';

export interface PressureSwitch {
  /** Place of its heater in the bank. */
  readonly heater: number;
  /** It makes at its setting and opens this much lower, Pa. */
  readonly differential: number;
  /** Distance to keep on either side, Pa: the spread of the switch and of the gauge that sets it. */
  readonly margin: number;
  /** Settings it can be turned to, Pa; absent: any. */
  readonly range?: readonly [least: number, most: number];
}

export interface SwitchWindow {
  /** Lowest and highest making point, gauge, Pa. Low over high: the window is empty. */
  readonly low: number;
  readonly high: number;
  /**
   * `window`: there is room. `out-of-range`: there is, but not where the switch can be turned to.
   * `flow-switch`: there is none; only a true flow switch can serve.
   */
  readonly verdict: 'window' | 'out-of-range' | 'flow-switch';
  /** Highest pressure at the switch with the pump off, gauge, Pa. */
  readonly rest: number;
  /** Lowest pressure at the switch with the pump on, gauge, Pa, and the state that gives it. */
  readonly running: number;
  readonly runningState: number;
  /** Pressure at the switch in each state, gauge, Pa. */
  readonly pressures: readonly number[];
}

const PRESSURE = { symbol: 'p', kind: 'pressure-difference', min: 0, max: 1e6 } as const;

/** The window over all heating states: every speed at which the heater may fire, clean and dirty. */
export function switchWindow(
  pad: Pad,
  states: readonly PadState[],
  sensor: PressureSwitch,
): Result<SwitchWindow> {
  const heater = pad.spec.bank?.heaters[sensor.heater];
  const issues = sensorIssues(sensor, heater, states);
  if (issues.length > 0 || heater === undefined) return fail(...issues);
  const pressures: number[] = [];
  for (const state of states) {
    const solution = solvePad(pad, state);
    if (!solution.ok) return solution;
    pressures.push(solution.value.heaters[sensor.heater]?.inletPressure ?? Number.NaN);
  }
  const rest = Math.max(...states.map((state) => pressureAtRest(pad.spec, heater, state)));
  const running = Math.min(...pressures);
  const { differential, margin } = sensor;
  const low = switchLowest.kernel({ rest, differential, margin });
  const high = switchHighest.kernel({ running, margin });
  const verdict = low > high ? 'flow-switch' : reachable(low, high, sensor.range) ? 'window' : 'out-of-range';
  return ok({ low, high, verdict, rest, running, runningState: pressures.indexOf(running), pressures });
}

/**
 * Highest gauge pressure (Pa) at a heater's switch with the pump off: the water of the highest basin whose way is
 * open, never under the atmosphere.
 */
export function pressureAtRest(spec: PadSpec, heater: PadHeater, state: PadState): number {
  const open = (branches: readonly BasinBranch[], openings: PadState['from']): string[] =>
    branches.filter((one) => openingOf(branches, one.basin, openings) > 0).map((one) => one.basin);
  const joined = new Set([...open(spec.suctions, state.from), ...open(spec.returns, state.to)]);
  const levels = spec.basins.filter((basin) => joined.has(basin.id)).map((basin) => basin.level);
  const { density } = propertiesAt(state.temperature ?? spec.temperature);
  const height = Math.max(...levels) - heater.elevation;
  return height > 0 ? staticPressure.kernel({ height, density }) : 0;
}

export interface LettingGo {
  /** Pump speed at which the switch opens, over that of the curve. */
  readonly speed: number;
  /** Heater flow then, m3/s. */
  readonly flow: number;
}

/**
 * Flow at which a switch set to `setting` (Pa) opens as the pump slows down from a state. No solution
 * (`never-opens`) when it stays made down to a twentieth of full speed, or was not made to begin with (`not-made`).
 */
export function flowWhenOpens(
  pad: Pad,
  state: PadState,
  sensor: PressureSwitch,
  setting: number,
): Result<LettingGo> {
  const opensAt = setting - sensor.differential;
  const over = (speed: number): number => {
    const solution = solvePad(pad, { ...state, speed });
    return solution.ok
      ? (solution.value.heaters[sensor.heater]?.inletPressure ?? Number.NaN) - opensAt
      : Number.NaN;
  };
  if (over(state.speed) < 0) return fail({ code: 'no-solution', where: 'switch', reason: 'not-made' });
  const speed = brentRoot(over, { low: SLOWEST, high: state.speed }, { tolerance: 1e-6 });
  if (!speed.ok) return fail({ code: 'no-solution', where: 'switch', reason: 'never-opens' });
  const report = pad.solve({ ...state, speed: speed.value });
  return report.ok ? ok({ speed: speed.value, flow: pad.heaterFlow(sensor.heater) }) : fail(...report.issues);
}

const SLOWEST = 0.05;

function reachable(low: number, high: number, range: PressureSwitch['range']): boolean {
  return range === undefined || (range[0] <= high && range[1] >= low);
}

function sensorIssues(
  sensor: PressureSwitch,
  heater: PadHeater | undefined,
  states: readonly PadState[],
): Issue[] {
  const issues = [
    variableIssue('switch.differential', sensor.differential, PRESSURE),
    variableIssue('switch.margin', sensor.margin, PRESSURE),
  ].filter((one) => one !== undefined);
  if (heater === undefined) issues.push({ code: 'ill-formed', where: 'switch.heater', reason: 'no-heater' });
  if (states.length === 0) issues.push({ code: 'ill-formed', where: 'states', reason: 'no-state' });
  return issues;
}
