/** Where on the picture a reading is missing: one mark a part, at the part. */
import type { WaterPicture } from '@firstfire/job';
import { hasBypass } from './drawn.ts';
import type { Box, LoopLayout } from './loop-layout.ts';

export interface Mark {
  readonly path: string;
  readonly x: number;
  readonly y: number;
}

export function marksOf(picture: WaterPicture, layout: LoopLayout): readonly Mark[] {
  const { bottomY, pump, filter, riserX, suctionX, topY, returnX } = layout;
  const at = (missing: readonly string[], x: number, y: number): Mark[] =>
    missing.slice(0, 1).map((path) => ({ path, x, y }));
  const boxes = (list: readonly Box[], missingOf: (id: string) => readonly string[]): Mark[] =>
    list.flatMap((box) => at(missingOf(box.id), box.x + box.width - 4, box.y + 4));
  const ofRole = (...roles: readonly string[]): readonly string[] =>
    picture.runs.filter(({ role }) => roles.includes(role)).flatMap((one) => one.missing);
  const missingIn = (list: readonly { id: string; missing: readonly string[] }[]) => (id: string) =>
    list.find((one) => one.id === id)?.missing ?? [];
  const noRun = picture.missing.filter((path) => path === 'waterRuns/-/role');
  const marks = [
    ...boxes(layout.basins, missingIn(picture.basins)),
    ...at([...ofRole('suction', ''), ...noRun], (suctionX + pump.x - pump.radius) / 2, bottomY),
    ...at(picture.pump.missing, pump.x, bottomY - 2),
    ...at(picture.filter.missing, filter.x, bottomY),
    ...at(ofRole('pump-to-filter'), (pump.x + filter.x) / 2, bottomY),
    ...at(ofRole('filter-to-heater'), riserX, bottomY - 46),
    ...boxes(layout.heaters, missingIn(picture.heaters)),
    ...at(ofRole('heater-branch', 'supply-header', 'return-header'), riserX, topY),
    ...at(ofRole('return'), returnX, topY + 40),
    ...(hasBypass(picture)
      ? at([...picture.bypass.missing, ...ofRole('bypass')], layout.valveX, layout.bypassY)
      : []),
  ];
  return marks.filter(({ path }, i) => marks.findIndex((one) => one.path === path) === i);
}
