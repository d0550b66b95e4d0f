/** Basins side by side, each with its own temperature and its own warm-up; the one tapped is looked at below. */
import type { HeatBasinShown } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { temperatureText, timeText } from './figures.ts';
import type { Heat } from './use-heat.ts';

export function BasinChoice({ heat, basin }: { readonly heat: Heat; readonly basin: HeatBasinShown }) {
  const text = useText();
  return (
    <fieldset className="choice-row heat-basins">
      <legend className="sr">{text.record('basins')}</legend>
      {heat.picture.basins.map((one) => (
        <label key={one.id} className={one.id === basin.id ? 'chosen' : ''}>
          <input
            type="radio"
            name="heat-basin"
            checked={one.id === basin.id}
            onChange={() => heat.lookAt(one.id)}
          />
          <span>{one.name === '' ? text.record('basins') : one.name}</span>
          <span className="heat-basin-said">{saidOf(one, text)}</span>
        </label>
      ))}
    </fieldset>
  );
}

function saidOf({ target, warmUp }: HeatBasinShown, text: AppText): string {
  const at = target === undefined ? '?' : temperatureText(target, text);
  if (warmUp === undefined) return at;
  const time = warmUp.time === undefined ? text.phrase('heat.never-short') : timeText(warmUp.time, text);
  return `${at} · ${time}`;
}
