/** The day the heaters are sized for: whose climate, which month, and what stands about the water. */
import { quantity } from '@firstfire/engine';
import type { HeatBasinShown } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { monthText, sentence, temperatureText } from './figures.ts';

export function DesignDay({ basin: { day } }: { readonly basin: HeatBasinShown }) {
  const text = useText();
  if (day === undefined) return null;
  const air = temperatureText(day.airTemperature, text);
  if (day.indoors) return <p className="second">{text.phrase('heat.day-indoors', { air })}</p>;
  const of = { month: monthText(day.month, text), place: placeText(day, text), air };
  return (
    <p className="second">
      {sentence(text.phrase(day.decided ? 'heat.day-decided' : 'heat.day', of), text)}{' '}
      {text.phrase('heat.day-about', {
        wind: windText(day.airSpeed, text),
        sky: temperatureText(day.skyTemperature, text),
        ground: temperatureText(day.groundTemperature, text),
        mains: temperatureText(day.mainsTemperature, text),
      })}{' '}
      {text.phrase(`heat-source.${day.source}`)}
    </p>
  );
}

function placeText({ place, source }: NonNullable<HeatBasinShown['day']>, text: AppText): string {
  return place === '' ? text.choice(source) : place;
}

function windText(si: number, text: AppText): string {
  const unit = text.reader.system === 'us' ? 'mph' : 'm/s';
  const digits = quantity.fromSi(si, unit, 'velocity') < 1 ? 1 : 2;
  return text.quantity(si, { unit, kind: 'velocity', digits });
}
