/** The loop as it is laid out and drawn: whole, inside its frame, and with the flows of the picture. */
import { readFileSync } from 'node:fs';
import { type PlainJob, plainView, surveyRecords, type WaterPicture, waterPictureOf } from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { spread } from '../../src/water/curve-frame.ts';
import { layLoop } from '../../src/water/loop-layout.ts';
import { pipesOf } from '../../src/water/loop-pipes.ts';
import { pointAlong } from '../../src/water/pipe.ts';

function pictureOf(name: string): WaterPicture {
  const file = new URL(`../../../../examples/${name}.survey.json`, import.meta.url);
  const records = surveyRecords(JSON.parse(readFileSync(file, 'utf8')));
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return waterPictureOf(plainView(records.value as PlainJob));
}

const NAMES = ['house-pool', 'public-pool', 'swap', 'winter-propane'];
const WIDTHS = [288, 328, 358, 560, 780, 1100];

describe('the loop as it is drawn', () => {
  const cases = NAMES.flatMap((name) => WIDTHS.map((width) => [name, width] as const));

  it.each(cases)('of %s stays in its frame at %i px', (name, width) => {
    const picture = pictureOf(name);
    const layout = layLoop(picture, width);
    const points = pipesOf({ picture, layout, state: picture.states[0] }).flatMap((pipe) => pipe.points);
    for (const [x, y] of points) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(width);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(layout.height);
    }
  });

  it.each(cases)('of %s keeps its parts apart at %i px', (name, width) => {
    const layout = layLoop(pictureOf(name), width);
    const boxes = [...layout.basins, ...layout.heaters];
    for (const one of boxes) {
      for (const other of boxes) {
        if (one === other) continue;
        const apartX = one.x + one.width <= other.x || other.x + other.width <= one.x;
        const apartY = one.y + one.height <= other.y || other.y + other.height <= one.y;
        expect(apartX || apartY).toBe(true);
      }
    }
    const { pump, filter, suctionX, riserX } = layout;
    expect(suctionX).toBeLessThan(pump.x - pump.radius);
    expect(pump.x + pump.radius).toBeLessThan(filter.x - filter.width / 2);
    expect(filter.x + filter.width / 2).toBeLessThan(riserX);
  });

  it.each(NAMES)('of %s carries in every pipe what meets at its ends', (name) => {
    const picture = pictureOf(name);
    const layout = layLoop(picture, 358);
    for (const state of picture.states) {
      const at = new Map<string, number>();
      const meet = ([x, y]: readonly [number, number], flow: number): void => {
        const key = `${x.toFixed(3)} ${y.toFixed(3)}`;
        at.set(key, (at.get(key) ?? 0) + flow);
      };
      for (const { points, flow } of pipesOf({ picture, layout, state })) {
        meet(points[0] as [number, number], -(flow ?? Number.NaN));
        meet(points.at(-1) as [number, number], flow ?? Number.NaN);
      }
      // What is neither kept nor lost anywhere but in the heaters, which stand between two pipes, and the basins.
      const open = [...at]
        .filter(([, net]) => Math.abs(net) > 1e-9)
        .map(([key]) => key.split(' ').map(Number));
      for (const [x = 0, y = 0] of open) {
        const atBox = [...layout.heaters, ...layout.basins].some(
          (box) =>
            Math.abs(y - box.y) <= box.height &&
            (Math.abs(x - box.x) < 1 || Math.abs(x - box.x - box.width) < 1),
        );
        expect([name, state.speed, x, y, atBox]).toEqual([name, state.speed, x, y, true]);
      }
    }
  });

  it('finds a point on a bent way', () => {
    const way = [
      [0, 0],
      [10, 0],
      [10, 30],
    ] as const;
    expect(pointAlong(way, 0.125)).toEqual({ x: 5, y: 0, angle: 0 });
    expect(pointAlong(way, 0.5)).toEqual({ x: 10, y: 10, angle: 90 });
    expect(pointAlong(way, 1)).toEqual({ x: 10, y: 30, angle: 90 });
  });

  it('moves names apart and keeps their order', () => {
    expect(spread([100, 10, 14])).toEqual([100, 10, 27]);
    expect(spread([50, 50])).toEqual([50, 67]);
  });
});
