/** What the pipes are drawn from, and what several of them ask of it. */
import type { WaterPicture, WaterStateShown } from '@firstfire/job';
import type { LoopLayout } from './loop-layout.ts';

export interface Drawn {
  readonly picture: WaterPicture;
  readonly layout: LoopLayout;
  readonly state: WaterStateShown | undefined;
}

export function total({ state }: Drawn): number | undefined {
  return state?.flowing?.flow;
}

/** Where the bypass leaves, or the first heater takes its water. */
export function splitY({ picture, layout }: Drawn): number {
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
