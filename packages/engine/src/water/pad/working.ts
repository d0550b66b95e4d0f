/**
 * How a solved pad came to its figures, written down: every part the water passes with the head it loses there, the
 * pump's head, and the pressure at each heater's switch. The flows are the solution's; each loss is the formula's own
 * kernel at that flow, so that a reader can add them up along any way and find the pump's head.
 *
 * Source: the formulas. Errors: those of `solvePad`.
 *
 * Worked example: the losses of suction, filter, heater and return sum to the head of the pump, less any lift.
 */
import { type Recorder, type Result, traced } from '../../trace/index.ts';
import { fittingLoss } from '../fitting/minor-loss.ts';
import { deviceLoss } from '../loss/device-loss.ts';
import { type LossLaw, lossAt, powerOf } from '../loss/loss-law.ts';
import { darcyLoss } from '../pipe/darcy-weisbach.ts';
import { hazenWilliamsLoss } from '../pipe/hazen-williams.ts';
import { pumpHead } from '../pump/curve.ts';
import { pumpHeadAtSpeed } from '../pump/speed-curve.ts';
import { stoppedPumpLoss } from '../pump/stopped.ts';
import { passing } from '../valve/characteristic.ts';
import { type LinkPart, valveResistance } from './layout.ts';
import type { PipeRun } from './line.ts';
import { AS_DRAWN, factorOf, openingOf, type Pad } from './pad.ts';
import { pointPressure } from './point-pressure.ts';
import { type PadSolution, solvePad, tapVelocity } from './solution.ts';
import type { PadState } from './spec.ts';

/** Flow that is none: what a solver leaves in a branch that nothing drives, m3/s. */
const STILL = 1e-12;

/** Solves a state and records its working; the solution is that of `solvePad`. */
export function explainPad(pad: Pad, state: PadState, recorder: Recorder): Result<PadSolution> {
  const solution = solvePad(pad, state);
  if (!solution.ok) return solution;
  recorder.open();
  for (const [link, part] of pad.layout.parts.entries()) {
    const flow = solution.value.flows[link] ?? 0;
    if (Math.abs(flow) > STILL) explainPart({ pad, state, recorder, flow, link }, part);
  }
  explainSwitches(pad, solution.value, recorder);
  recorder.closeGroup({ id: 'water.pad', value: solution.value.flow, kind: 'volume-flow' });
  return solution;
}

interface Passage {
  readonly pad: Pad;
  readonly state: PadState;
  readonly recorder: Recorder;
  readonly flow: number;
  readonly link: number;
}

function explainPart(at: Passage, part: LinkPart): void {
  const { pad, recorder, link } = at;
  recorder.open();
  explain(at, part);
  const about = { part: pad.layout.links[link]?.id ?? '' };
  recorder.closeGroup({ id: `water.pad-${part.part}`, value: pad.network.loss(link), kind: 'head', about });
}

function explain(at: Passage, part: LinkPart): void {
  const { filter, bank } = at.pad.spec;
  if (part.part === 'pump' && part.stopped) explainDevice(at, stoppedPumpLoss(at.pad.spec.pump.curve), 1);
  else if (part.part === 'pump') explainPump(at);
  else if (part.part === 'filter') explainDevice(at, filter.clean, at.state.loading ?? 1);
  else if (part.part === 'bypass-valve') explainBypass(at);
  else if (part.part === 'port') explainPort(at, part);
  else if (part.part === 'heater') {
    const loss = bank?.heaters[part.heater]?.loss;
    if (loss) explainDevice(at, loss, at.state.wear?.heater ?? 1);
  } else {
    const factor = factorOf(part.side, { ...AS_DRAWN, ...at.state.wear });
    if (part.item.type === 'pipe') explainRun(at, part.item, factor);
    else explainDevice(at, part.item.loss, factor);
  }
}

function explainRun({ pad, recorder, flow }: Passage, run: PipeRun, factor: number): void {
  const { insideDiameter, wall } = run;
  const { viscosity } = pad.water;
  const length = run.length * factor;
  const k = run.k * factor;
  if (wall.method === 'darcy') {
    traced(darcyLoss, { insideDiameter, length, roughness: wall.roughness, viscosity, flow }, recorder);
  } else traced(hazenWilliamsLoss, { insideDiameter, length, cFactor: wall.cFactor, flow }, recorder);
  if (k > 0) traced(fittingLoss, { k, insideDiameter, flow }, recorder);
}

function explainDevice({ recorder, flow }: Passage, law: LossLaw, factor: number): void {
  const power = powerOf(law);
  if (power) traced(deviceLoss, { resistance: power.r * factor, exponent: power.n, flow }, recorder);
  else recorder.given({ id: 'water.loss-curve', value: factor * lossAt(law, flow), kind: 'head' });
}

function explainPort(
  { pad, state, recorder, flow }: Passage,
  part: Extract<LinkPart, { part: 'port' }>,
): void {
  const inward = part.side === 'suction';
  const branches = inward ? pad.spec.suctions : pad.spec.returns;
  const port = branches.find((one) => one.basin === part.basin)?.port;
  if (port === undefined) return;
  const opening = openingOf(branches, part.basin, inward ? state.from : state.to);
  traced(fittingLoss, { k: port.k / opening ** 2, insideDiameter: port.insideDiameter, flow }, recorder);
}

function explainBypass({ pad, state, recorder, flow }: Passage): void {
  const valve = pad.spec.bypass?.valve;
  if (valve === undefined) return;
  const coefficient = passing(valve, state.bypass ?? 0);
  recorder.given({ id: 'water.valve-coefficient', value: coefficient, kind: 'flow-coefficient' });
  traced(deviceLoss, { resistance: valveResistance(coefficient), exponent: 2, flow }, recorder);
}

function explainPump({ pad, state, recorder, flow }: Passage): void {
  const { curve } = pad.spec.pump;
  const wear = state.wear?.pump ?? 1;
  const speedRatio = state.speed;
  if (curve.shape === 'power') {
    const coefficients = { shutoff: curve.a * wear, fall: curve.b * wear, power: curve.c };
    traced(pumpHeadAtSpeed, { ...coefficients, speedRatio, flow }, recorder);
    return;
  }
  const value = wear * speedRatio ** 2 * pumpHead(curve, flow / speedRatio);
  recorder.given({ id: 'water.pump-curve', value, kind: 'head' });
}

function explainSwitches(pad: Pad, solution: PadSolution, recorder: Recorder): void {
  for (const [i, { inlet }] of pad.places.heaters.entries()) {
    const heater = pad.spec.bank?.heaters[i];
    const point = solution.heaters[i];
    if (heater === undefined || point === undefined) continue;
    recorder.open();
    const { density } = solution.water;
    const { elevation } = heater;
    const at = {
      head: pad.network.potential(inlet),
      elevation,
      velocity: tapVelocity(heater, point.flow),
      density,
    };
    const value = traced(pointPressure, at, recorder);
    recorder.closeGroup({ id: 'water.pad-switch', value, kind: 'pressure', about: { heater: heater.id } });
  }
}
