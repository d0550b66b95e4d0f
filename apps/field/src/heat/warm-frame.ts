/** Where everything of the warm-up chart stands. */
import { quantity } from '@firstfire/engine';
import type { HeatBasinShown, WarmPoint, WarmUpShown } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { type Scale, scaleOf } from './scale.ts';

export interface WarmFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  readonly across: Scale;
  readonly up: Scale;
  readonly x: (time: number) => number;
  readonly y: (temperature: number) => number;
}

const SHORT = 3 * quantity.HOUR;
/** Nothing that takes longer than this many times what is wanted stretches the chart further. */
const MOST_TIMES = 6;

export function longest({ wanted, warmUp }: HeatBasinShown): number {
  const { time, points = [] } = warmUp ?? {};
  const own = time ?? points.at(-1)?.[0] ?? 86_400;
  if (wanted === undefined) return own * 1.3;
  return Math.max(wanted, Math.min(own, wanted * MOST_TIMES)) * 1.3;
}

interface Asked {
  readonly warmUp: WarmUpShown;
  readonly long: number;
  readonly width: number;
  readonly text: AppText;
}

export function warmFrame({ warmUp, long, width, text }: Asked): WarmFrame {
  const { start, target, plateau } = warmUp;
  const [left, right, top, foot] = [42, width - 14, 64, width > 560 ? 330 : 292];
  const way = Math.max(target - start, 2);
  const high = Math.min(Math.max(target + 0.28 * way, Math.min(plateau + 0.08 * way, target + 0.5 * way)));
  const across = scaleOf({ low: 0, high: long, unit: long < SHORT ? 'min' : 'h', kind: 'time', about: 6 });
  const up = scaleOf({
    low: Math.min(start, target) - 0.04 * way,
    high,
    unit: quantity.preferredUnit('temperature', text.reader.system),
    kind: 'temperature',
  });
  return {
    left,
    right,
    top,
    foot,
    across,
    up,
    x: (time) => left + across.at(time) * (right - left),
    y: (temperature) => foot - up.at(temperature) * (foot - top),
  };
}

/** The curve up to the target, and what the water would do if the heater went on. */
export function cutAt(points: readonly WarmPoint[], { time, target }: WarmUpShown) {
  if (time === undefined) return { before: points, beyond: [] };
  const at: WarmPoint = [time, target];
  return {
    before: [...points.filter(([t]) => t < time), at],
    beyond: [at, ...points.filter(([t]) => t > time)],
  };
}
