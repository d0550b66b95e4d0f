/** Whether the water is warm when it is wanted warm, in a sentence. */
import type { HeatBasinShown } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { timeText } from './figures.ts';

export function verdictText({ warmUp, wanted }: HeatBasinShown, text: AppText): string {
  if (warmUp === undefined) return '';
  const { time } = warmUp;
  if (time === undefined) return text.phrase('heat.never-warm');
  if (wanted === undefined) return text.phrase('heat.warm-after', { time: timeText(time, text) });
  const left = wanted - time;
  return left >= 0
    ? text.phrase('heat.early', { time: timeText(left, text) })
    : text.phrase('heat.late', { time: timeText(-left, text) });
}
