/** The heat line as a picture: the water warming up, heaters of other sizes, where the heat goes, the basin's shape. */
import type { HeatBasinShown } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { Blank } from './blank.tsx';
import { Climate } from './climate.tsx';
import { Losses } from './losses.tsx';
import { Shape } from './shape.tsx';
import { Sizes } from './sizes.tsx';
import { type Heat, useHeat } from './use-heat.ts';
import { useWeather } from './use-weather.ts';
import { useYear } from './use-year.ts';
import { WarmUp } from './warm-up.tsx';
import { YearPart } from './year.tsx';
import './heat.css';

export default function HeatPicture() {
  const heat = useHeat();
  const { basin } = heat;
  const file = useWeather();
  const year = useYear(file.weather);
  if (basin === undefined) return <Blank />;
  // Nothing else can be said before that.
  const unmeasured = basin.area === undefined;
  return (
    <div className="heat-picture">
      {heat.picture.basins.length > 1 && <BasinChoice heat={heat} basin={basin} />}
      {unmeasured && <Shape basin={basin} />}
      <WarmUp heat={heat} basin={basin} />
      <Sizes heat={heat} basin={basin} />
      <Losses basin={basin} />
      <YearPart basin={basin} year={year} />
      {!unmeasured && <Shape basin={basin} />}
      <Climate file={file} />
    </div>
  );
}

function BasinChoice({ heat, basin }: { readonly heat: Heat; readonly basin: HeatBasinShown }) {
  const text = useText();
  return (
    <fieldset className="heat-choice">
      <legend className="sr">{text.record('basins')}</legend>
      {heat.picture.basins.map(({ id, name }) => (
        <label key={id} className={id === basin.id ? 'chosen' : ''}>
          <input type="radio" name="heat-basin" checked={id === basin.id} onChange={() => heat.lookAt(id)} />
          {name === '' ? text.record('basins') : name}
        </label>
      ))}
    </fieldset>
  );
}
