/**
 * Head against flow: what the pump gives at each of its speeds, and what the loop asks for with the filter clean and
 * due. What a loop asks for does not hang on the pump, so that the same loop run at other speeds traces its curve.
 */
import { water } from '@firstfire/engine';
import { SurveyReader } from '../facts/survey-reader.ts';
import type { JobView } from '../facts/view.ts';
import { readingPath } from '../facts/view.ts';
import { takeCurve } from '../plant/water/equipment.ts';
import type { LoopAt, StateAsked } from '../plant/water/water-loop.ts';
import type { HeadPoint, PumpCurveShown, SystemCurveShown, WaterCurves } from './water-shown.ts';
import { lackedBy, type WaterSurveyed, waterSurveyed } from './water-surveyed.ts';

const STEPS = 12;

/** Beyond the fastest speed, so that the curve crosses the pump's. */
const BEYOND = 1.1;

/** The curves of a job with its bypass as it stands; what cannot be known is left out. */
export function waterCurvesOf(view: JobView, basin: string): WaterCurves {
  const read = waterSurveyed(view);
  const states = read.states.filter(
    ({ asked, reader }) => asked.basin === basin && lackedBy(read.reader, reader).length === 0,
  );
  const at = read.loop.at(read.values);
  const speeds = read.states.filter(({ asked }) => asked.basin === basin && asked.filter === 'clean');
  const pump = speeds.flatMap(({ asked }) => pumpCurve(read, asked.speed));
  if (!at.ok) return { pump, system: [] };
  const system = (['clean', 'dirty'] as const).flatMap((filter) => {
    const own = states.filter(({ asked }) => asked.filter === filter).map(({ asked }) => asked);
    return systemCurve(read, at.value, own);
  });
  return { pump, system };
}

function ratioOf({ plan, values }: WaterSurveyed, speed: string): number {
  return (
    values(readingPath('pumpSpeeds', speed, 'speed')) / values(readingPath('pumps', plan.pump, 'speedFull'))
  );
}

function pumpCurve(read: WaterSurveyed, speed: string): PumpCurveShown[] {
  const curve = takeCurve(new SurveyReader(read.view), read.plan.pump);
  const speedRatio = ratioOf(read, speed);
  if (curve === undefined || !(speedRatio > 0)) return [];
  const end = flowAtNoHead(curve);
  const points: HeadPoint[] = [];
  for (let i = 0; i <= STEPS; i += 1) {
    const flow = (end * i) / STEPS;
    const head = Math.max(water.pumpHead(curve, flow), 0);
    points.push([
      water.affinityFlow.kernel({ flow, speedRatio }),
      water.affinityHead.kernel({ head, speedRatio }),
    ]);
  }
  return [{ speed, points }];
}

/** Where its head has gone, or its last point carried on to there. */
function flowAtNoHead(curve: water.PumpCurve): number {
  if (curve.shape === 'power') return (curve.a / curve.b) ** (1 / curve.c);
  const last = curve.flows.at(-1) ?? 0;
  return last;
}

function systemCurve(read: WaterSurveyed, at: LoopAt, states: readonly StateAsked[]): SystemCurveShown[] {
  const [first] = states;
  if (first === undefined) return [];
  const state = at.state(first, read.values);
  if (!state.ok) return [];
  const fastest = BEYOND * Math.max(...states.map(({ speed }) => ratioOf(read, speed)));
  const points: HeadPoint[] = [];
  for (let i = 1; i <= STEPS; i += 1) {
    const solved = water.solvePad(at.pad, { ...state.value, speed: (fastest * i) / STEPS });
    if (solved.ok && solved.value.flow > 0) points.push([solved.value.flow, solved.value.pumpHead]);
  }
  return [{ basin: first.basin, filter: first.filter, points }];
}
