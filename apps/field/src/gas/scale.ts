/** A scale of pressures: what it reaches from and to, and where its lines stand. */
import type { GasHeaterSeen, GasLeg, GasState } from '@firstfire/job';

export interface Scale {
  /** Gauge, Pa. */
  readonly low: number;
  readonly high: number;
  readonly y: (value: number) => number;
  /** What the appliance bears: the least while gas flows, the greatest while none does. */
  readonly limit: number | undefined;
}

export interface ScaleAsk {
  readonly state: GasState;
  readonly heater: Pick<GasHeaterSeen, 'least' | 'greatest'> | undefined;
  readonly top: number;
  readonly bottom: number;
  /** The scale as it stood: it stays while everything fits in it. */
  readonly keep?: Pick<Scale, 'low' | 'high'> | undefined;
}

/** Pressures at the ends of a piece; one end only where the other belongs to another scale. */
export type Ends = Partial<Pick<GasLeg, 'from' | 'to'>>;

/** Room kept beyond the figures, as a share of their span. */
const ROOM = 0.16;
/** So that a line that loses next to nothing is not drawn as a cliff. */
const LEAST_SPAN = 0.08;

/** Reaches over the state shown, the one dashed beside it, and the limit; undefined where nothing is known. */
export function scaleOf(
  pieces: readonly Ends[],
  { state, heater, top, bottom, keep }: ScaleAsk,
): Scale | undefined {
  const limit = state === 'all-off' ? heater?.greatest : heater?.least;
  const flowing: readonly GasState[] = ['heater-alone', 'everything-on'];
  const shown = state === 'all-off' ? [state] : flowing;
  const values = pieces.flatMap(({ from, to }) => shown.flatMap((one) => [from?.[one], to?.[one]]));
  if (values.every((one) => one === undefined)) return undefined;
  const known = [...values, limit].filter((one) => one !== undefined);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const span = Math.max(most - least, LEAST_SPAN * Math.abs(most), 1);
  const spare = span - (most - least);
  const fit = { low: least - ROOM * span - spare / 2, high: most + (ROOM * span) / 2 + spare / 2 };
  const low = keep === undefined || least < keep.low ? Math.min(fit.low, keep?.low ?? fit.low) : keep.low;
  const high =
    keep === undefined || most > keep.high ? Math.max(fit.high, keep?.high ?? fit.high) : keep.high;
  const y = (value: number): number => bottom - ((value - low) / (high - low)) * (bottom - top);
  return { low, high, y, limit };
}

/** Round values between two: about as many as asked. Worked example: 4.1 … 7.2 in about 5 → 4.5, 5, 5.5 … 7. */
export function ticksBetween(low: number, high: number, about = 5): readonly number[] {
  const rough = (high - low) / about;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough * 0.8) ?? 10 * power;
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}
