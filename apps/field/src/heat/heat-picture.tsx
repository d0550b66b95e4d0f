/** The heat line as a picture: the water warming up, heaters of other sizes, where the heat goes, the basin's shape. */
import { BasinChoice } from './basin-choice.tsx';
import { Blank } from './blank.tsx';
import { Climate } from './climate.tsx';
import { Losses } from './losses.tsx';
import { Shape } from './shape.tsx';
import { Sizes } from './sizes.tsx';
import { still } from './still.ts';
import { useHeat } from './use-heat.ts';
import { useWeather } from './use-weather.ts';
import { useYear } from './use-year.ts';
import { WarmUp } from './warm-up.tsx';
import { YearPart } from './year.tsx';
import '../ui/picture.css';
import './heat.css';

const StillLosses = still(Losses);
const StillYear = still(YearPart);
const StillShape = still(Shape);

export default function HeatPicture() {
  const heat = useHeat();
  const { basin } = heat;
  const file = useWeather();
  const year = useYear(file.hours);
  if (basin === undefined) return <Blank />;
  // Nothing else can be said before that.
  const unmeasured = basin.area === undefined;
  return (
    <div className="heat-picture">
      {heat.picture.basins.length > 1 && <BasinChoice heat={heat} basin={basin} />}
      {unmeasured && <StillShape basin={basin} />}
      <WarmUp heat={heat} basin={basin} />
      <Sizes heat={heat} basin={basin} />
      <StillLosses basin={basin} />
      <StillYear basin={basin} year={year} />
      {!unmeasured && <StillShape basin={basin} />}
      <Climate file={file} />
    </div>
  );
}
