/**
 * A year of each basin by the hour: a pass of its own, for it takes a hundred times as long as everything else.
 *
 * Weather is that of the bundled place, of the months the job holds or of a file; each basin is marched by itself with the heaters it has (two that
 * trade water over a spillway together), with its cover and without. What the months leave open (rain, guests, a pump
 * that rests) is not counted.
 */
import { heat, type Issue, ok, type Result } from '@firstfire/engine';
import { nameOf } from '../facts/subjects.ts';
import { SurveyReader } from '../facts/survey-reader.ts';
import type { JobView } from '../facts/view.ts';
import { ownValuesOf } from '../plant/model.ts';
import { type YearContext, yearBasinOf } from './basin.ts';
import { costOf, heaterOf } from './heater.ts';
import { type PriceReadings, takePrices, takeYear } from './readings.ts';
import { exchangeOf, type Group, groupsOf } from './spillway.ts';
import { isOfClimate, type NamedWeather, siteWeather, takeSiteWeather } from './weather.ts';

export interface YearOfUse {
  /** Its basins are in the order of the names. */
  readonly answer: heat.YearAnswer;
  /** Absent where the price of the fuel is not known. */
  readonly cost?: heat.YearCost;
}

export interface BasinName {
  readonly id: string;
  readonly label: string;
}

/** How far a year can be trusted to be that of the whole plant. */
export type YearNote = 'shares-heaters' | 'trades-water' | 'spillway-not-counted';

/** One basin, or two that trade water. */
export interface BasinYearStudy {
  readonly names: readonly BasinName[];
  readonly notes: readonly YearNote[];
  readonly covered: YearOfUse;
  readonly bare: YearOfUse;
}

export type YearStudy =
  | { readonly state: 'known'; readonly place: string; readonly basins: readonly BasinYearStudy[] }
  | { readonly state: 'unknown'; readonly missing: readonly string[] }
  | { readonly state: 'impossible'; readonly issues: readonly Issue[] };

export interface YearOptions {
  /** Weather of a file in place of the bundled place's, and what to call it. */
  readonly weather?: NamedWeather;
  /** Called after every year that is marched. */
  readonly marched?: (done: number, of: number) => void;
}

export function yearOfJob(view: JobView, options: YearOptions = {}): YearStudy {
  const reader = new SurveyReader(view);
  const basins = view.all('basins').map((record) => takeYear(reader, record.id));
  if (basins.length === 0) return { state: 'unknown', missing: ['basins/pool/shape'] };
  const groups = groupsOf(reader, basins);
  const prices = takePrices(reader);
  const site = takeSiteWeather(reader);
  // With weather of its own the job needs no climate of the site.
  const stands = (path: string): boolean => options.weather === undefined || !isOfClimate(path);
  const missing = reader.missing.filter(stands);
  if (missing.length > 0) return { state: 'unknown', missing };
  const wrong = reader.wrong.filter(({ where }) => stands(where));
  if (wrong.length > 0) return { state: 'impossible', issues: wrong };
  const weather = options.weather ? ok(options.weather) : siteWeather(reader, site);
  if (!weather.ok) return { state: 'impossible', issues: weather.issues };
  let done = 0;
  const context: Context = {
    weather: weather.value.hours,
    values: ownValuesOf(reader.parameters),
    prices,
    marched: () => options.marched?.(++done, marchesOf(groups)),
  };
  const years: BasinYearStudy[] = [];
  for (const group of groups) {
    const year = bothYears(group, context);
    if (!year.ok) return { state: 'impossible', issues: year.issues };
    years.push({ names: namesOf(view, group), notes: notesOf(group, groups), ...year.value });
  }
  return { state: 'known', place: weather.value.name, basins: years };
}

function namesOf(view: JobView, { basins }: Group): readonly BasinName[] {
  return basins.map(({ id }) => ({ id, label: nameOf('basins', view.record('basins', id)) }));
}

function notesOf(group: Group, groups: readonly Group[]): readonly YearNote[] {
  const heatersOf = ({ basins }: Group): string[] =>
    basins.flatMap(({ burners }) => burners.map(({ id }) => id));
  const own = heatersOf(group);
  const shares = groups.some((other) => other !== group && heatersOf(other).some((id) => own.includes(id)));
  return [
    ...(group.basins.length > 1 ? (['trades-water'] as const) : []),
    ...(shares ? (['shares-heaters'] as const) : []),
    ...(group.spillsUncounted ? (['spillway-not-counted'] as const) : []),
  ];
}

interface Context extends YearContext {
  readonly prices: PriceReadings;
  readonly marched: () => void;
}

function hasCover({ basins }: Group): boolean {
  return basins.some(({ day }) => day.cover !== 'none');
}

/** A year without a cover for each, and one with it where there is one. */
function marchesOf(groups: readonly Group[]): number {
  return groups.length + groups.filter(hasCover).length;
}

function bothYears(group: Group, context: Context): Result<Pick<BasinYearStudy, 'covered' | 'bare'>> {
  const anyCover = hasCover(group);
  const bare = yearOf(group, context, false);
  if (!bare.ok) return bare;
  const covered = anyCover ? yearOf(group, context, true) : bare;
  return covered.ok ? ok({ covered: covered.value, bare: bare.value }) : covered;
}

function yearOf({ basins }: Group, context: Context, withCover: boolean): Result<YearOfUse> {
  const { weather, values } = context;
  const asked: heat.YearBasin[] = [];
  for (const basin of basins) {
    const made = yearBasinOf(basin, context, withCover && basin.day.cover !== 'none');
    if (!made.ok) return made;
    asked.push(made.value);
  }
  const heater = heaterOf(basins[0], values);
  if (!heater.ok) return heater;
  const exchange = exchangeOf(basins, weather, values);
  if (!exchange.ok) return exchange;
  const answer = heat.poolYear({
    weather,
    basins: asked,
    heater: heater.value,
    ...(exchange.value ? { exchange: exchange.value } : {}),
  });
  if (!answer.ok) return answer;
  context.marched();
  const cost = costOf(answer.value, context.prices, values);
  if (!cost.ok) return cost;
  return ok({ answer: answer.value, ...(cost.value ? { cost: cost.value } : {}) });
}
