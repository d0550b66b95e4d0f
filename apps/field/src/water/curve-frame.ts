/** The frame in which pump and system curves stand, in pixels. */
import type { HeadPoint, WaterCurves, WaterStateShown } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { type Scale, scaleTo } from './figures.ts';

export interface CurveFrame {
  readonly across: Scale;
  readonly up: Scale;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  readonly x: (flow: number) => number;
  readonly y: (head: number) => number;
  /** Height at which a curve leaves the frame, for its name. */
  readonly endOf: (points: readonly HeadPoint[]) => number;
}

interface Framed {
  readonly curves: WaterCurves;
  readonly working: readonly WaterStateShown[];
  readonly text: AppText;
  readonly width: number;
  /** Signs of the longest name beside a curve. */
  readonly signs: number;
}

/** Pixels of a sign of small text. */
const SIGN = 7.6;

/** Beyond the greatest flow at which the loop runs. */
const BEYOND = 1.25;

export function curveFrame({ curves, working, text, width, signs }: Framed): CurveFrame {
  const [left, right, top] = [40, width - 14 - SIGN * signs, 20];
  const foot = width < 560 ? 190 : 220;
  const running = Math.max(0, ...working.map((one) => one.flowing?.flow ?? 0)) * BEYOND;
  const farthest = Math.max(...curves.pump.flatMap(({ points }) => points.map(([flow]) => flow)));
  const across = scaleTo(running > 0 ? running : farthest, 'volume-flow', { text });
  const heads = curves.pump.flatMap(({ points }) => points.map(([, head]) => head));
  const up = scaleTo(Math.max(...heads), 'head', { text });
  const x = (flow: number): number => left + across.at(flow) * (right - left);
  const y = (head: number): number => foot - up.at(head) * (foot - top);
  const endOf = (points: readonly HeadPoint[]): number => {
    const inside = points.filter(([flow]) => x(flow) <= right);
    const next = points[inside.length];
    const last = inside.at(-1)?.[1] ?? 0;
    return Math.min(foot, y(next === undefined ? last : (last + next[1]) / 2) + 5);
  };
  return { across, up, left, right, top, foot, x, y, endOf };
}

const LINE = 17;

/** Heights moved apart so that a line of text fits between each and the next; the order stays. */
export function spread(heights: readonly number[]): readonly number[] {
  const order = heights.map((height, i) => ({ height, i })).sort((a, b) => a.height - b.height);
  const placed = [...heights];
  let least = Number.NEGATIVE_INFINITY;
  for (const { height, i } of order) {
    placed[i] = Math.max(height, least);
    least = (placed[i] ?? 0) + LINE;
  }
  return placed;
}
