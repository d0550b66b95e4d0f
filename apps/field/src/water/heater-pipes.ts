/** The pipes of the heaters: from the riser into each, and from each to where the bypass joins. */
import { type Drawn, splitY, total } from './drawn.ts';
import type { LoopLayout } from './loop-layout.ts';
import type { Pipe, Point } from './pipe.ts';

export function heaterPipes(drawn: Drawn): Pipe[] {
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
