/**
 * The links as columns of plain numbers: what the inner loop reads and writes, without an object in sight.
 */

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
export const STRIDE = 8;

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
  /** Change of flow in the last step. */
  readonly step: Float64Array;
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

  constructor(count: number) {
    const numbers = (): Float64Array => new Float64Array(count);
    this.count = count;
    this.code = new Uint8Array(count);
    this.state = new Uint8Array(count);
    this.check = new Uint8Array(count);
    this.oneWay = new Uint8Array(count);
    this.closed = new Uint8Array(count);
    this.parameters = new Float64Array(count * STRIDE);
    this.points = Array.from({ length: count }, () => NO_TABLE);
    this.custom = Array.from({ length: count }, () => NO_CURVE);
    this.q = numbers();
    this.loss = numbers();
    this.slope = numbers();
    this.step = numbers();
    this.lossAtRest = numbers();
    this.backSlope = numbers();
    this.start = numbers();
    this.order = new Int32Array(count);
    this.orderAt = new Int32Array(count);
    this.special = new Int32Array(count);
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
