/** Where on the picture a part can be touched, by the row of the list that says the same. */
import type { WaterPicture, WaterRunShown } from '@firstfire/job';
import { type Drawn, hasBypass, splitY } from './drawn.ts';
import type { Box } from './loop-layout.ts';
import { rowId } from './part-rows.ts';

export interface PartSpot extends Box {
  /** Too small to be touched: it is marked there when its row is taken. */
  readonly slight?: true;
}

/** What a finger finds. */
const TOUCH = 44;
const PIPE = 34;

export function partSpots(drawn: Drawn): readonly PartSpot[] {
  const { picture, layout } = drawn;
  const { pump, filter, bottomY, valveX, bypassY } = layout;
  const round = Math.max(TOUCH, pump.radius * 2);
  const wide = Math.max(TOUCH, filter.width);
  return [
    ...picture.runs.flatMap((run) => runSpot(drawn, run)),
    ...layout.basins.map((box) => ({ ...box, id: rowId('basins', box.id) })),
    around(rowId('pumps', picture.pump.id), { x: pump.x, y: bottomY, width: round, height: round }),
    around(rowId('filters', picture.filter.id), {
      x: filter.x,
      y: bottomY,
      width: wide,
      height: Math.max(TOUCH, filter.height),
    }),
    ...layout.heaters.map((box) => ({ ...box, id: rowId('heaters', box.id) })),
    ...(hasBypass(picture)
      ? [around(rowId('waterLoop', '-'), { x: valveX, y: bypassY, width: TOUCH, height: TOUCH })]
      : []),
  ];
}

function around(id: string, { x, y, width, height }: Omit<Box, 'id'>): PartSpot {
  return { id, x: x - width / 2, y: y - height / 2, width, height };
}

function runSpot(drawn: Drawn, run: WaterRunShown): readonly PartSpot[] {
  const { layout } = drawn;
  const { riserX, bottomY, pump, filter, headerX, mergeX, topY, returnX } = layout;
  const id = rowId('waterRuns', run.id);
  const slight = (x: number, y: number): PartSpot[] => [
    { ...around(id, { x, y, width: 26, height: 26 }), slight: true },
  ];
  const heater = layout.heaters.find((box) => box.id === run.heater) ?? layout.heaters[0];
  switch (run.role) {
    case 'suction':
      return suctionSpot(drawn, run);
    case 'pump-to-filter': {
      const [x, end] = [pump.x + pump.radius, filter.x - filter.width / 2];
      return [{ id, x, y: bottomY - TOUCH / 2, width: end - x, height: TOUCH }];
    }
    case 'filter-to-heater': {
      const y = Math.min(splitY(drawn) + TOUCH, bottomY - TOUCH);
      return [{ id, x: riserX - PIPE / 2 - 5, y, width: PIPE, height: bottomY - y + 8 }];
    }
    case 'heater-branch':
      return heater === undefined
        ? []
        : slight((heater.x + heater.width + riserX) / 2, heater.y + heater.height / 2);
    case 'supply-header':
      return slight(riserX - 3, splitY(drawn) - 26);
    case 'return-header':
      return slight(headerX, topY + 26);
    case 'return':
      return isServed(drawn, run)
        ? [{ id, x: returnX, y: topY - TOUCH / 2, width: mergeX - returnX, height: TOUCH }]
        : asideSpot(drawn, run, slight);
    default:
      return [];
  }
}

type Slight = (x: number, y: number) => PartSpot[];

/** The return of a basin that the water does not go to now. */
function asideSpot({ layout }: Drawn, run: WaterRunShown, slight: Slight): PartSpot[] {
  const box = layout.basins.find((one) => one.id === run.basin);
  return box === undefined ? [] : slight((layout.returnX + box.x) / 2 + 4, box.y + box.height * 0.62);
}

function suctionSpot({ layout, picture }: Drawn, run: WaterRunShown): PartSpot[] {
  const { basins, pump, bottomY } = layout;
  const id = rowId('waterRuns', run.id);
  const own = basins.find((box) => box.id === run.basin) ?? basins[0];
  if (own === undefined) return [];
  const x = own.x + own.width;
  if (own === basins[0] && sharesNone(picture, run))
    return [{ id, x, y: bottomY - TOUCH / 2, width: pump.x - pump.radius - x, height: TOUCH }];
  return [{ ...around(id, { x: x + 12, y: own.y + own.height / 2, width: 26, height: 26 }), slight: true }];
}

/** No other suction of the same basin would lie in the same place. */
function sharesNone({ runs }: WaterPicture, run: WaterRunShown): boolean {
  return runs.find((one) => one.role === run.role && one.basin === run.basin)?.id === run.id;
}

function isServed({ picture, state }: Drawn, run: WaterRunShown): boolean {
  const flow = (id: string): number => state?.flowing?.runs.get(id)?.flow ?? 0;
  const returns = picture.runs.filter(({ role }) => role === 'return');
  const served = returns.find(({ id }) => flow(id) > 1e-7);
  return (served ?? returns.find(({ basin }) => basin === state?.basin) ?? returns[0])?.id === run.id;
}
