/** A scale with round values in the reader's unit. */
import { quantity } from '@firstfire/engine';

export interface Scale {
  readonly unit: string;
  /** Round values in that unit. */
  readonly ticks: readonly number[];
  /** Where a value in SI stands, as a share of the scale. */
  readonly at: (si: number) => number;
  /** The value in SI at a share of it. */
  readonly si: (share: number) => number;
  readonly tickAt: (tick: number) => number;
}

export interface Span {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly kind: quantity.Kind;
  /** How many ticks, about. */
  readonly about?: number;
}

export function scaleOf({ low, high, unit, kind, about = 5 }: Span): Scale {
  const from = quantity.fromSi(low, unit, kind);
  const to = Math.max(quantity.fromSi(high, unit, kind), from + 1e-9);
  const step = stepFor((to - from) / about, unit);
  const ticks: number[] = [];
  for (let i = Math.ceil(from / step - 1e-9); i * step <= to + 1e-9; i += 1)
    ticks.push(Number((i * step).toPrecision(9)));
  const tickAt = (tick: number): number => (tick - from) / (to - from);
  return {
    unit,
    ticks,
    tickAt,
    at: (si) => tickAt(quantity.fromSi(si, unit, kind)),
    si: (share) => quantity.si(from + share * (to - from), unit, kind),
  };
}

/** Hours are counted in quarters of a day, everything else in tens. */
const HOURS = [1, 2, 3, 6, 12, 24, 48, 72, 120, 240] as const;

function stepFor(rough: number, unit: string): number {
  const hours = unit === 'h' ? HOURS.find((one) => one >= rough) : undefined;
  if (hours !== undefined && rough > 0.5) return hours;
  const power = 10 ** Math.floor(Math.log10(rough));
  return (([1, 2, 5].find((one) => one * power >= rough * 0.999) ?? 10) as number) * power;
}
