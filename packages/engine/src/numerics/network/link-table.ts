/**
 * The links as columns of plain numbers: what the inner loop reads and writes, without an object in sight.
 */

import type { Columns } from '../sparse/index.ts';

/** Which law a link follows. */
export const POWER = 0;
export const QUADRATIC = 1;
export const FRICTION = 2;
export const CURVE = 3;
export const PUMP = 4;
export const REGULATOR = 5;
export const CUSTOM = 6;
export const LAWS = 7;

/** What a link is doing. */
export const OPEN = 0;
/** A one-way link that holds back reverse flow. */
export const BLOCKED = 1;
/** A regulator that holds its outlet. */
export const HOLDING = 2;
/** Shut by the caller, or a pump at rest. */
export const SHUT = 3;

/** Numbers a law keeps in `parameters`. */
export const STRIDE = 9;

/** Loss and slope of a law of another kind. */
export interface LossCurve {
  readonly loss: (q: number) => number;
  readonly slope: (q: number) => number;
}

/** A stretch of `order`: links of one law, `begin` to before `end`. */
export interface Stretch {
  begin: number;
  end: number;
}

const NO_TABLE = new Float64Array(0);
const NO_CURVE: LossCurve = { loss: () => 0, slope: () => 0 };

/** One number a link in each column; laid out once, written ever after. */
export class LinkTable {
  readonly count: number;
  readonly code: Uint8Array;
  readonly state: Uint8Array;
  /** 1 where the caller put a check valve. */
  readonly check: Uint8Array;
  /** 1 where flow may only run forward: check valves, pumps, regulators. */
  readonly oneWay: Uint8Array;
  /** 1 where the caller shut the link. */
  readonly closed: Uint8Array;
  readonly parameters: Float64Array;
  /** Points of a law by lines: x, y and the slope of the line that follows, point after point. */
  readonly points: Float64Array[];
  readonly custom: LossCurve[];
  /** Flow, and loss and slope of the loss at that flow. */
  readonly q: Float64Array;
  readonly loss: Float64Array;
  readonly slope: Float64Array;
  /** Loss at no flow of a one-way link, and the slope of the trickle it lets back. */
  readonly lossAtRest: Float64Array;
  readonly backSlope: Float64Array;
  /** Flow to start from. */
  readonly start: Float64Array;
  /** Links sorted by law, where each stands in that order, and the stretch of each law. */
  readonly order: Int32Array;
  readonly orderAt: Int32Array;
  readonly stretches: readonly Stretch[] = Array.from({ length: LAWS }, () => ({ begin: 0, end: 0 }));
  /** The stretch of a single link. */
  readonly single: Stretch = { begin: 0, end: 0 };
  /** Least slope that the equations are given. */
  slopeFloor = 0;
  /** The first `specialCount` are the links that may be in another state than open. */
  readonly special: Int32Array;
  specialCount = 0;

  constructor(count: number, columns: Columns) {
    this.count = count;
    this.code = columns.flags(count);
    this.state = columns.flags(count);
    this.check = columns.flags(count);
    this.oneWay = columns.flags(count);
    this.closed = columns.flags(count);
    this.parameters = columns.numbers(count * STRIDE);
    this.points = new Array<Float64Array>(count).fill(NO_TABLE);
    this.custom = new Array<LossCurve>(count).fill(NO_CURVE);
    this.q = columns.numbers(count);
    this.loss = columns.numbers(count);
    this.slope = columns.numbers(count);
    this.lossAtRest = columns.numbers(count);
    this.backSlope = columns.numbers(count);
    this.start = columns.numbers(count);
    this.order = columns.integers(count);
    this.orderAt = columns.integers(count);
    this.special = columns.integers(count);
  }

  /** Sorts the links by law, and lists the special ones: to be called when a law, a one-way rule or a state changed. */
  regroup(): void {
    let at = 0;
    this.stretches.forEach((stretch, law) => {
      stretch.begin = at;
      for (let i = 0; i < this.count; i += 1) {
        if (this.code[i] !== law) continue;
        this.order[at] = i;
        this.orderAt[i] = at;
        at += 1;
      }
      stretch.end = at;
    });
    this.specialCount = 0;
    for (let i = 0; i < this.count; i += 1) {
      if (this.oneWay[i] === 0 && this.state[i] === OPEN) continue;
      this.special[this.specialCount] = i;
      this.specialCount += 1;
    }
  }
}
