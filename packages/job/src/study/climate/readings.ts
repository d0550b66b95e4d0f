/**
 * Twelve months of a climate as the readings a job keeps: typed in, or condensed from a weather file. The file itself is
 * too large for a log; what is kept is what the design day and a typical year are computed from.
 */
import { heat, quantity } from '@firstfire/engine';
import type { HowKnown, Reading } from '../../schema/index.ts';
import type { JobView, RecordView } from '../facts/view.ts';
import { CLIMATE_MONTHS } from '../plant/heat/site-climate.ts';

export interface ClimateReading {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
  readonly reading: Reading;
}

type MonthField = 'airTemperature' | 'relativeHumidity' | 'windSpeed' | 'globalRadiation' | 'cloud';

export interface MonthColumn {
  readonly field: MonthField;
  readonly unit: string;
  /** Twelve, in that unit. */
  readonly values: readonly number[];
  /** As they were typed, where the unit is another. */
  readonly typed?: readonly string[];
}

export interface TypedMonths {
  readonly name: string;
  /** Degrees, north above zero; left as it is where not known. */
  readonly latitude?: number;
  readonly columns: readonly MonthColumn[];
}

/** Means somebody copied from a table. */
export function climateOfMonths({ name, latitude, columns }: TypedMonths): readonly ClimateReading[] {
  return climateReadings({
    source: 'typed',
    how: 'drawing',
    name,
    columns,
    ...(latitude === undefined ? {} : { latitude }),
  });
}

/** The months of a weather file; the name says which file, and of where. */
export function climateOfFile(
  { weather }: Pick<heat.EpwYear, 'weather'>,
  name: string,
): readonly ClimateReading[] {
  const months = heat.normalsOfYear(weather);
  const celsius = months.airTemperature.map((T) => quantity.fromSi(T, 'degC', 'temperature'));
  const columns: readonly MonthColumn[] = [
    { field: 'airTemperature', unit: 'degC', values: celsius },
    { field: 'relativeHumidity', unit: '%', values: months.relativeHumidity.map((share) => 100 * share) },
    { field: 'windSpeed', unit: 'm/s', values: months.windSpeed },
    {
      field: 'globalRadiation',
      unit: 'W/m2',
      values: months.globalRadiation.map((day) => day / quantity.DAY),
    },
    { field: 'cloud', unit: '%', values: months.cloud.map((share) => 100 * share) },
  ];
  const latitude = quantity.fromSi(weather.place.latitude, 'deg', 'angle');
  return climateReadings({ source: 'file', how: 'measured', name, latitude, columns });
}

interface Told extends TypedMonths {
  readonly source: 'typed' | 'file';
  readonly how: HowKnown;
}

function climateReadings({ source, how, name, latitude, columns }: Told): readonly ClimateReading[] {
  const site = (field: string, reading: Reading): ClimateReading => ({
    collection: 'site',
    id: '-',
    field,
    reading,
  });
  return [
    site('climateFrom', { value: source, how }),
    ...(name === '' ? [] : [site('climateName', { value: name, how })]),
    ...(latitude === undefined ? [] : [site('latitude', { value: rounded(latitude), unit: 'deg', how })]),
    ...columns.flatMap(({ field, unit, values, typed }) =>
      values.map((value, month): ClimateReading => {
        const as = typed?.[month];
        const reading = { value: rounded(value), unit, how, ...(as === undefined ? {} : { typed: as }) };
        return { collection: CLIMATE_MONTHS, id: String(month + 1), field, reading };
      }),
    ),
  ];
}

/** A thousandth of a degree or of a metre a second is far under what any station knows. */
function rounded(value: number): number {
  return Number(value.toFixed(3));
}

/** A job with a climate put in the place of its own: the job itself stays as it is. */
export function withClimate(view: JobView, climate: readonly ClimateReading[]): JobView {
  const over = (collection: string, record: RecordView): RecordView => {
    const own = new Map(
      climate
        .filter((one) => one.collection === collection && one.id === record.id)
        .map(({ field, reading }) => [field, reading]),
    );
    return { id: record.id, reading: (field) => own.get(field) ?? record.reading(field) };
  };
  const ids = [...new Set(climate.filter((one) => one.collection === CLIMATE_MONTHS).map(({ id }) => id))];
  const months = ids.map((id) => over(CLIMATE_MONTHS, { id, reading: () => undefined }));
  const site = over('site', view.record('site', '-'));
  const listed = new Map<string, readonly RecordView[]>([
    [CLIMATE_MONTHS, months],
    ['site', [site]],
  ]);
  return {
    all: (collection) => listed.get(collection) ?? view.all(collection),
    record: (collection, id) =>
      listed.get(collection)?.find((one) => one.id === id) ?? view.record(collection, id),
  };
}
