/**
 * Basins that trade water over a spillway. Where the flow was surveyed and one bank of heaters warms both, the two
 * are marched together; water runs over the edge in the hours surveyed, in the months in which both are in use.
 */
import { fail, heat, ok, type Result } from '@firstfire/engine';
import type { SurveyReader, Where } from '../facts/survey-reader.ts';
import { readingPath } from '../facts/view.ts';
import type { Values } from '../plant/model.ts';
import { seasonOf } from './basin.ts';
import { takeTogether, type YearReadings } from './readings.ts';

/** One basin, or one that spills (it has the heat first) and the one it spills into. */
export interface Group {
  readonly basins: readonly [YearReadings, ...YearReadings[]];
  /** A spillway whose water is not counted. */
  readonly spillsUncounted: boolean;
}

/** The basins, two that trade water together. */
export function groupsOf(reader: SurveyReader, basins: readonly YearReadings[]): readonly Group[] {
  const spills = basins.map((basin) => takeSpill(reader, basin.id, basins));
  const taken = new Set<YearReadings>();
  const pairs = new Map<YearReadings, YearReadings>();
  spills.forEach((spill, i) => {
    const from = basins[i];
    if (from === undefined || !spill?.surveyed || taken.has(from) || taken.has(spill.into)) return;
    if (!sameHeaters(from, spill.into)) return;
    pairs.set(from, spill.into);
    taken.add(from).add(spill.into);
  });
  const second = new Set(pairs.values());
  return basins.flatMap((basin, i): Group[] => {
    if (second.has(basin)) return [];
    const into = pairs.get(basin);
    if (into) return [{ basins: [basin, into], spillsUncounted: false }];
    return [{ basins: [basin], spillsUncounted: spills[i] !== undefined }];
  });
}

interface Spill {
  readonly into: YearReadings;
  readonly surveyed: boolean;
}

function takeSpill(reader: SurveyReader, id: string, basins: readonly YearReadings[]): Spill | undefined {
  const at = (field: string): Where => ({ collection: 'basins', id, field });
  const name = reader.wordOr(at('spillway'), '');
  if (name === '') return undefined;
  const others = basins.filter((basin) => basin.id !== id);
  const into = others.find((basin) => basin.id === name);
  if (into === undefined) {
    reader.refuse(at('spillway'), { found: name, expected: others.map((basin) => basin.id) });
    return undefined;
  }
  return { into, surveyed: takeTogether(reader, ['spillwayFlow', 'spillwayFrom', 'spillwayTo'].map(at)) };
}

function sameHeaters(one: YearReadings, other: YearReadings): boolean {
  const ids = ({ burners }: YearReadings): string => burners.map(({ id }) => id).join(' ');
  return ids(one) === ids(other);
}

/** Water traded in every hour, m3/s each way; nothing for a basin by itself. */
export function exchangeOf(
  basins: readonly YearReadings[],
  weather: heat.HourlyWeather,
  values: Values,
): Result<Float64Array | undefined> {
  const [upper, lower] = basins;
  if (upper === undefined || lower === undefined) return ok(undefined);
  const of = (field: string): number => values(readingPath('basins', upper.id, field));
  const seasons = [upper, lower].map((basin) => heat.seasonHours(seasonOf(basin), weather));
  const [first, second] = seasons;
  if (!first?.ok || !second?.ok)
    return fail(...seasons.flatMap((season) => (season.ok ? [] : season.issues)));
  const shares = heat.coveredBetween(of('spillwayFrom') / 3600, of('spillwayTo') / 3600);
  const flow = of('spillwayFlow');
  return ok(
    Float64Array.from(
      first.value,
      (inUse, hour) => inUse * (second.value[hour] ?? 0) * (shares[hour % 24] ?? 0) * flow,
    ),
  );
}
