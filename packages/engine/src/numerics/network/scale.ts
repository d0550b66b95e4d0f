/**
 * What is large and what is small in this network: a flow and a potential of the size to be expected. Starting
 * flows, the straight start of power laws and the trickle of blocked links are parts of them, so that the solver
 * works alike in metres of head and in pascals squared.
 */
import type { LinkLaw, PowerLaw, RegulatorLaw } from './law.ts';

export interface Scale {
  /** m3/s. */
  readonly flow: number;
  readonly potential: number;
  /** Loss of one link to start from: a path takes about as many links as the root of their number. */
  readonly startLoss: number;
  /** Flow and potential that are no reason for a link to change its state. */
  readonly flowMargin: number;
  readonly potentialMargin: number;
  /** Least slope of a law that the equations are given. */
  readonly slopeFloor: number;
  /** Flow and loss below which a relative error means nothing. */
  readonly leastFlow: number;
  readonly leastLoss: number;
  /** The last digits of the greatest held potential: no potential is finer. */
  readonly grain: number;
}

const MARGIN = 1e-9;
const LEAST = 1e-6;
const LAST_DIGITS = 16 * Number.EPSILON;
/** Without any hint: a litre a second. */
const FLOW_WITHOUT_HINT = 1e-3;
/** Demands that are less of what a pipe carries at its starting flow say nothing about the network. */
const SMALL_PART = 1e-3;
/** m3/s: no flow that anyone asks about. */
const NOTHING = 1e-12;
/** Pipe flow to start from: 1 m/s, or this Reynolds number where no diameter is known. */
const START_VELOCITY = 1;
const START_REYNOLDS = 5e4;

export interface ScaleInputs {
  readonly laws: readonly LinkLaw[];
  readonly fixed: Float64Array;
  readonly demands: Float64Array;
}

/** The scale from demands, pumps and held potentials; from the losses themselves where these say nothing. */
export function networkScale(inputs: ScaleInputs): Scale {
  const spread = potentialSpread(inputs);
  const flow = flowScale(inputs, spread);
  const potential = spread > 0 ? spread : greatestLoss(inputs.laws, flow) || 1;
  let held = potential;
  for (const value of inputs.fixed) held = Math.max(held, Math.abs(value));
  return {
    flow,
    potential,
    startLoss: potential / (2 * Math.sqrt(inputs.laws.length)),
    flowMargin: MARGIN * flow,
    potentialMargin: MARGIN * potential,
    slopeFloor: (MARGIN * potential) / flow,
    leastFlow: LEAST * flow,
    leastLoss: LEAST * potential,
    grain: LAST_DIGITS * held,
  };
}

function greatestLoss(laws: readonly LinkLaw[], flow: number): number {
  let most = 0;
  for (const law of laws) {
    const loss = lossAt(law, flow);
    if (loss > most) most = loss;
  }
  return most;
}

/** Change of scale that is worth a new one. */
const RESCALE = 8;

/** Whether two scales are near enough for one to serve as the other. */
export function alike(a: Scale, b: Scale): boolean {
  const near = (x: number, y: number): boolean => x < RESCALE * y && y < RESCALE * x;
  return near(a.flow, b.flow) && near(a.potential, b.potential) && near(a.grain, b.grain);
}

function flowScale({ laws, demands }: ScaleInputs, spread: number): number {
  let demand = 0;
  for (const q of demands) demand += Math.abs(q);
  let driven = 0;
  let own = 0;
  for (const law of laws) {
    const flow = ownFlow(law);
    if (flow > own) own = flow;
    if (law.type === 'pump' && flow > driven) driven = flow;
  }
  const flow = Math.max(demand, driven, SMALL_PART * own);
  if (flow > NOTHING) return flow;
  let byPower = 0;
  for (const law of laws) if (law.type === 'power') byPower = Math.max(byPower, flowFor(law, spread));
  return byPower > NOTHING ? byPower : FLOW_WITHOUT_HINT;
}

function potentialSpread({ laws, fixed }: ScaleInputs): number {
  let high = Number.NEGATIVE_INFINITY;
  let low = Number.POSITIVE_INFINITY;
  let lift = 0;
  const hold = (value: number): void => {
    if (value > high) high = value;
    if (value < low) low = value;
  };
  for (const value of fixed) hold(value);
  for (const law of laws) {
    if (law.type === 'regulator') hold(heldAtRest(law));
    if (law.type === 'pump')
      lift = Math.max(lift, law.curve.shape === 'power' ? law.curve.a : law.curve.heads[0]!);
  }
  return Math.max(high >= low ? high - low : 0, lift);
}

/** The value a regulator holds at no flow, by its first point. */
function heldAtRest({ outlet }: RegulatorLaw): number {
  return 'set' in outlet ? outlet.set : outlet.potentials[0]!;
}

/** A flow that belongs to the law itself; 0 when it names none. */
export function ownFlow(law: LinkLaw): number {
  switch (law.type) {
    case 'darcy':
      return (Math.PI / 4) * law.diameter ** 2 * START_VELOCITY;
    case 'friction':
      return START_REYNOLDS / law.reynoldsPerFlow;
    case 'curve':
      return law.flows.at(-1)! / 2;
    case 'pump':
      return pumpFlow(law);
    case 'custom':
      return Math.abs(law.expectedFlow ?? 0);
    default:
      return 0;
  }
}

function pumpFlow({ curve, speed }: Extract<LinkLaw, { type: 'pump' }>): number {
  if (curve.shape === 'points') return (curve.flows.at(-1)! / 2) * speed;
  return (curve.a / (2 * curve.b)) ** (1 / curve.c) * speed;
}

/** The flow to start link iterations from. */
export function startFlow(law: LinkLaw, scale: Scale): number {
  const own = ownFlow(law);
  if (own > 0) return own;
  const byLoss = law.type === 'power' ? flowFor(law, scale.startLoss) : 0;
  return byLoss > 0 ? Math.min(byLoss, scale.flow) : scale.flow;
}

/** Loss at no flow; below zero for a pump, above for a curve with a cracking loss. */
export function lossAtRest(law: LinkLaw): number {
  if (law.type === 'custom') return law.loss(0);
  if (law.type === 'curve') return valueAtZero(law.flows, law.losses);
  if (law.type !== 'pump') return 0;
  const { curve, speed } = law;
  const lift = curve.shape === 'power' ? curve.a : valueAtZero(curve.flows, curve.heads);
  return -lift * speed * speed;
}

/** Value at 0 of the lines through the points, the end lines going on; 0 is itself the value of a mirrored curve. */
function valueAtZero(xs: readonly number[], ys: readonly number[]): number {
  const after = xs.findIndex((x, k) => x >= 0 && k > 0);
  const k = after < 0 ? xs.length - 1 : after;
  const slope = (ys[k]! - ys[k - 1]!) / (xs[k]! - xs[k - 1]!);
  return ys[k]! - slope * xs[k]!;
}

function flowFor({ r, n, m = 0 }: PowerLaw, loss: number): number {
  if (r > 0) return (loss / r) ** (1 / n);
  return m > 0 ? Math.sqrt(loss / m) : 0;
}

/** Loss of a plain law at a flow; only its size matters here. */
function lossAt(law: LinkLaw, q: number): number {
  if (law.type === 'power') return law.r * q ** law.n + (law.m ?? 0) * q * q;
  if (law.type === 'friction') return (0.02 * law.c + (law.m ?? 0)) * q * q;
  if (law.type === 'curve') return Math.abs(law.losses.at(-1)!);
  if (law.type === 'custom') return Math.abs(law.loss(q));
  if (law.type !== 'darcy') return 0;
  const velocity = q / ((Math.PI / 4) * law.diameter ** 2);
  return ((0.02 * law.length) / law.diameter + (law.k ?? 0)) * (velocity ** 2 / 20);
}
