/**
 * Everything one asks of a straight run at once: head, velocity, Reynolds number, regime and friction factor.
 *
 * By Hazen–Williams the friction factor is the one Darcy–Weisbach would need for the same head, so that both methods
 * can stand side by side.
 *
 * Source: `darcyLoss`, `hazenWilliamsLoss`. Range and errors: theirs.
 *
 * Worked example: see the two formulas.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import { evaluate, fail, type Issue, ok, type Recorder, type Result } from '../../trace/index.ts';
import { darcyLoss } from './darcy-weisbach.ts';
import { frictionFactor, type Regime, regimeOf } from './friction-factor.ts';
import { hazenWilliamsLoss } from './hazen-williams.ts';
import { reynolds } from './reynolds.ts';
import { velocity } from './velocity.ts';

/** How a wall resists: a roughness for Darcy–Weisbach (m), or a C for Hazen–Williams. */
export type Wall =
  | { readonly method: 'darcy'; readonly roughness: number }
  | { readonly method: 'hazen-williams'; readonly cFactor: number };

export interface PipeLossOf {
  /** D, m. */
  readonly insideDiameter: number;
  /** L, m. */
  readonly length: number;
  readonly wall: Wall;
  /** ν, m2/s. */
  readonly viscosity: number;
  /** Q, m3/s. */
  readonly flow: number;
}

export interface PipeLoss {
  /** m of the flowing water. */
  readonly headLoss: number;
  /** m/s. */
  readonly velocity: number;
  readonly reynolds: number;
  readonly regime: Regime;
  /** Darcy's; zero at no flow, where it means nothing. */
  readonly frictionFactor: number;
}

/** Loss of a straight run and the state of its flow; any value outside its range is an issue. */
export function pipeLoss(x: PipeLossOf, recorder?: Recorder): Result<PipeLoss> {
  const head = headOf(x, recorder);
  const v = evaluate(velocity, x);
  const re = evaluate(reynolds, x);
  if (!head.ok || !v.ok || !re.ok) return failAll(head, v, re);
  const flowing = { headLoss: head.value, velocity: v.value, reynolds: re.value, regime: regimeOf(re.value) };
  return ok({ ...flowing, frictionFactor: factorOf(x, flowing) });
}

function headOf(x: PipeLossOf, recorder?: Recorder): Result<number> {
  const { insideDiameter, length, viscosity, flow } = x;
  if (x.wall.method === 'hazen-williams') {
    return evaluate(hazenWilliamsLoss, { insideDiameter, length, flow, cFactor: x.wall.cFactor }, recorder);
  }
  const roughness = x.wall.roughness;
  return evaluate(darcyLoss, { insideDiameter, length, flow, viscosity, roughness }, recorder);
}

function factorOf(x: PipeLossOf, flowing: { headLoss: number; velocity: number; reynolds: number }): number {
  if (x.flow === 0) return 0;
  if (x.wall.method === 'darcy') {
    const relativeRoughness = x.wall.roughness / x.insideDiameter;
    return frictionFactor.kernel({ reynolds: flowing.reynolds, relativeRoughness });
  }
  if (x.length === 0) return 0;
  const velocityHead = flowing.velocity ** 2 / (2 * STANDARD_GRAVITY);
  return (Math.abs(flowing.headLoss) * x.insideDiameter) / (x.length * velocityHead);
}

/** One failure of several results; the same issue is told once. */
function failAll(...results: readonly Result<unknown>[]): Result<never> {
  const issues = new Map<string, Issue>();
  for (const result of results) {
    if (!result.ok) for (const issue of result.issues) issues.set(`${issue.code} ${issue.where}`, issue);
  }
  return fail(...issues.values());
}
