/** The pipes of the loop as they are drawn: their way, their flow, which way it goes, and what is missing of them. */
import type { WaterPicture, WaterStateShown } from '@firstfire/job';
import type { LoopLayout } from './loop-layout.ts';

export type Point = readonly [x: number, y: number];

export interface Pipe {
  readonly id: string;
  readonly points: readonly Point[];
  /** m3/s; undefined where it is not known. */
  readonly flow: number | undefined;
  /** A valve keeps the water out. */
  readonly shut: boolean;
  /** Share of its way at which the arrow stands; none where it is left out. */
  readonly arrow?: number;
}

interface Drawn {
  readonly picture: WaterPicture;
  readonly layout: LoopLayout;
  readonly state: WaterStateShown | undefined;
}

export function pipesOf(drawn: Drawn): readonly Pipe[] {
  return [
    ...suctions(drawn),
    ...foot(drawn),
    ...heaterPipes(drawn),
    ...bypassPipes(drawn),
    ...returns(drawn),
  ];
}

type Side = 'suction' | 'return';

/** The basin the water comes from or goes to: its own run stands open. */
function served({ picture, state }: Drawn, side: Side): string {
  const flowing = state?.flowing;
  const open = picture.runs.find(
    ({ id, role }) => role === side && (flowing?.runs.get(id)?.flow ?? 0) > 1e-7,
  );
  return open?.basin || state?.basin || (picture.basins[0]?.id ?? '');
}

function total({ state }: Drawn): number | undefined {
  return state?.flowing?.flow;
}

function suctions(drawn: Drawn): Pipe[] {
  const { layout } = drawn;
  const open = served(drawn, 'suction');
  const place = layout.basins.findIndex(({ id }) => id === open);
  const pipes: Pipe[] = layout.basins.map((box) => ({
    id: `suction ${box.id}`,
    points: [
      [box.x + box.width, box.y + box.height / 2],
      [layout.suctionX, box.y + box.height / 2],
    ],
    flow: box.id === open ? total(drawn) : 0,
    shut: box.id !== open,
  }));
  for (let i = 1; i < layout.basins.length; i += 1) {
    const [upper, lower] = [layout.basins[i], layout.basins[i - 1]];
    if (upper === undefined || lower === undefined) continue;
    const runs = i <= place;
    pipes.push({
      id: `suction manifold ${i}`,
      points: [
        [layout.suctionX, upper.y + upper.height / 2],
        [layout.suctionX, lower.y + lower.height / 2],
      ],
      flow: runs ? total(drawn) : 0,
      shut: !runs,
      ...(runs ? { arrow: 0.5 } : {}),
    });
  }
  return pipes;
}

/** From the suction to where the bypass leaves. */
function foot(drawn: Drawn): Pipe[] {
  const { layout } = drawn;
  const { bottomY, riserX, pump, filter } = layout;
  const end = splitY(drawn);
  const flow = total(drawn);
  const part = (id: string, points: readonly Point[], arrow: number): Pipe => ({
    id,
    points,
    flow,
    shut: false,
    arrow,
  });
  return [
    part(
      'to pump',
      [
        [layout.suctionX, bottomY],
        [pump.x, bottomY],
      ],
      0.3,
    ),
    part(
      'to filter',
      [
        [pump.x, bottomY],
        [filter.x, bottomY],
      ],
      0.52,
    ),
    part(
      'to heaters',
      [
        [filter.x, bottomY],
        [riserX, bottomY],
        [riserX, end],
      ],
      0.75,
    ),
  ];
}

function splitY({ picture, layout }: Drawn): number {
  if (hasBypass(picture)) return layout.bypassY;
  const [first] = layout.heaters;
  return first === undefined ? layout.topY : first.y + first.height / 2;
}

/** Its handle can be turned. */
export function hasHandle(picture: WaterPicture): boolean {
  return hasBypass(picture) && picture.bypass.kind === 'manual';
}

/** There is one, or nobody has said yet that there is none. */
export function hasBypass({ bypass, heaters }: WaterPicture): boolean {
  return bypass.kind !== 'none' && heaters.length > 0;
}

function heaterPipes(drawn: Drawn): Pipe[] {
  const { layout, picture, state } = drawn;
  const flows = layout.heaters.map(({ id }) => state?.flowing?.heaters.find((one) => one.id === id)?.flow);
  if (layout.heaters.length === 0)
    return [
      {
        id: 'past',
        points: [
          [layout.riserX, layout.topY],
          [layout.mergeX, layout.topY],
        ],
        flow: total(drawn),
        shut: false,
      },
    ];
  const pipes: Pipe[] = [];
  let from = splitY(drawn);
  layout.heaters.forEach((box, i) => {
    const y = box.y + box.height / 2;
    if (from !== y)
      pipes.push({
        id: `supply ${box.id}`,
        points: [
          [layout.riserX, from],
          [layout.riserX, y],
        ],
        flow: sum(flows.slice(i)),
        shut: false,
      });
    pipes.push({
      id: `in ${box.id}`,
      points: [
        [layout.riserX, y],
        [box.x + box.width, y],
      ],
      flow: flows[i],
      shut: false,
    });
    if (layout.headerX < box.x)
      pipes.push({
        id: `out ${box.id}`,
        points: [
          [box.x, y],
          [layout.headerX, y],
        ],
        flow: flows[i],
        shut: false,
      });
    from = y;
  });
  const reverse = picture.arrangement === 'reverse';
  for (let i = 1; i < layout.heaters.length; i += 1) {
    const [near, far] = [middle(layout, i - 1), middle(layout, i)];
    const carried = reverse ? flows.slice(0, i) : flows.slice(i);
    const points: readonly Point[] = [
      [layout.headerX, reverse ? near : far],
      [layout.headerX, reverse ? far : near],
    ];
    pipes.push({ id: `back ${i}`, points, flow: sum(carried), shut: false });
  }
  pipes.push({
    id: 'heated',
    points: [
      [layout.headerX, layout.topY],
      [layout.mergeX, layout.topY],
    ],
    flow: sum(flows),
    shut: false,
    ...(layout.narrow ? {} : { arrow: 0.5 }),
  });
  return pipes;
}

function middle({ heaters }: LoopLayout, i: number): number {
  const box = heaters[i];
  return box === undefined ? 0 : box.y + box.height / 2;
}

function sum(flows: readonly (number | undefined)[]): number | undefined {
  return flows.reduce((all, one) => (all === undefined || one === undefined ? undefined : all + one), 0);
}

function bypassPipes(drawn: Drawn): Pipe[] {
  const { layout, picture, state } = drawn;
  if (!hasBypass(picture)) return [];
  const flow = state?.flowing?.bypass;
  const shut = flow !== undefined && flow < 1e-9;
  return [
    {
      id: 'bypass',
      points: [
        [layout.riserX, layout.bypassY],
        [layout.mergeX, layout.bypassY],
        [layout.mergeX, layout.topY],
      ],
      flow,
      shut,
      ...(shut ? {} : { arrow: beforeMerge(layout) }),
    },
  ];
}

/** On the level part of the bypass, between valve and turn. */
function beforeMerge({ riserX, valveX, mergeX, bypassY, topY }: LoopLayout): number {
  const middle = (valveX + mergeX) / 2;
  return (riserX - middle) / (riserX - mergeX + bypassY - topY);
}

function returns(drawn: Drawn): Pipe[] {
  const { layout } = drawn;
  const open = served(drawn, 'return');
  const place = layout.basins.findIndex(({ id }) => id === open);
  const flow = total(drawn);
  const highest = layout.basins.at(-1);
  const stub = ({ y, height }: { readonly y: number; readonly height: number }): number => y + height * 0.62;
  const { returnX, mergeX, topY } = layout;
  const pipes: Pipe[] = [
    {
      id: 'return',
      points: [
        [mergeX, topY],
        [returnX, topY],
        [returnX, highest === undefined ? topY : stub(highest)],
      ],
      flow,
      shut: false,
      arrow: 0.3,
    },
  ];
  layout.basins.forEach((box, i) => {
    const runs = box.id === open;
    pipes.push({
      id: `return ${box.id}`,
      points: [
        [returnX, stub(box)],
        [box.x, stub(box)],
      ],
      flow: runs ? flow : 0,
      shut: !runs,
    });
    const lower = layout.basins[i - 1];
    if (lower === undefined) return;
    const on = place < i;
    pipes.push({
      id: `return manifold ${i}`,
      points: [
        [returnX, stub(box)],
        [returnX, stub(lower)],
      ],
      flow: on ? flow : 0,
      shut: !on,
    });
  });
  return pipes;
}

/** The point and direction at a share of a pipe's way. */
export function pointAlong(points: readonly Point[], share: number): { x: number; y: number; angle: number } {
  const lengths = points
    .slice(1)
    .map(([x, y], i) => Math.hypot(x - (points[i]?.[0] ?? 0), y - (points[i]?.[1] ?? 0)));
  let left = share * lengths.reduce((all, one) => all + one, 0);
  for (const [i, length] of lengths.entries()) {
    const [from, to] = [points[i] as Point, points[i + 1] as Point];
    if (left <= length || i === lengths.length - 1) {
      const part = length === 0 ? 0 : left / length;
      const angle = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
      return { x: from[0] + (to[0] - from[0]) * part, y: from[1] + (to[1] - from[1]) * part, angle };
    }
    left -= length;
  }
  return { x: 0, y: 0, angle: 0 };
}
