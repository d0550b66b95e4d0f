/** The pipes of the loop as they are drawn: their way, their flow, which way it goes, and what is missing of them. */
import { type Drawn, hasBypass, splitY, total } from './drawn.ts';
import { heaterPipes } from './heater-pipes.ts';
import type { LoopLayout } from './loop-layout.ts';
import type { Pipe, Point } from './pipe.ts';

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
