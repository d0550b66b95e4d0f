/** A figure of a heater at each speed at which it may run, filter clean and due. */
import type { HeaterInFlow, WaterPicture } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { flowText, rpmText } from './figures.ts';
import { stateName } from './names.ts';

export interface SpeedRow {
  readonly id: string;
  readonly speed: string;
  readonly basin: string;
  readonly label: string;
  /** SI. */
  readonly clean: number | undefined;
  readonly dirty: number | undefined;
}

interface Asked {
  readonly heater: string;
  readonly figure: (heater: HeaterInFlow) => number;
}

export function speedRows(
  picture: WaterPicture,
  { heater, figure }: Asked,
  text: AppText,
): readonly SpeedRow[] {
  const { states, speeds } = picture;
  const of = (speed: string, basin: string, filter: string): number | undefined => {
    const state = states.find((one) => one.speed === speed && one.basin === basin && one.filter === filter);
    const shown = state?.flowing?.heaters.find(({ id }) => id === heater);
    return shown && figure(shown);
  };
  return states
    .filter((one) => one.heating && one.filter === 'clean')
    .map(({ speed, basin }) => {
      const rpm = rpmText(speeds.find(({ id }) => id === speed)?.speed, text);
      return {
        id: `${speed} ${basin}`,
        speed,
        basin,
        label: stateName(picture, { rpm, basin }, text),
        clean: of(speed, basin, 'clean'),
        dirty: of(speed, basin, 'dirty'),
      };
    });
}

/** From the filter due to the filter clean, the unit once. */
export function spanText({ clean, dirty }: Pick<SpeedRow, 'clean' | 'dirty'>, text: AppText): string {
  if (clean === undefined) return dirty === undefined ? '?' : flowText(dirty, text);
  if (dirty === undefined) return flowText(clean, text);
  const low = /^[\d.,\u00a0\u202f]*\d/.exec(flowText(dirty, text))?.[0] ?? flowText(dirty, text);
  return text.phrase('water.span', { low, high: flowText(clean, text) });
}
