/** What parts of the loop are called: as people call them, else by their kind. */
import type { WaterPart, WaterPicture } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';

type Kind = 'basins' | 'pumps' | 'filters' | 'heaters' | 'waterRuns' | 'pumpSpeeds';

export function partName({ name }: Pick<WaterPart, 'name'>, kind: Kind, text: AppText): string {
  return name === '' ? text.record(kind) : name;
}

export function nameIn(
  parts: readonly WaterPart[],
  id: string,
  { kind, text }: { kind: Kind; text: AppText },
): string {
  return partName(parts.find((one) => one.id === id) ?? { name: '' }, kind, text);
}

/** A state as a few words: the speed, and the basin where there is more than one. */
export function stateName(
  { basins }: WaterPicture,
  { rpm, basin }: { readonly rpm: string; readonly basin: string },
  text: AppText,
): string {
  return basins.length > 1 ? `${rpm} · ${nameIn(basins, basin, { kind: 'basins', text })}` : rpm;
}
