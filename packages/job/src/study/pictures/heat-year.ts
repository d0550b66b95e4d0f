/** A year of a basin by its months, as a page shows it; and what the year stands on, as plain records. */
import { properties } from '@firstfire/engine';
import { RECORD_BY_COLLECTION } from '../../schema/index.ts';
import type { PlainJob } from '../facts/plain-view.ts';
import type { JobView, RecordView } from '../facts/view.ts';
import type { YearOfUse } from '../year/index.ts';

export interface YearMonths {
  /** J of gross heat. */
  readonly fuel: readonly number[];
  /** In the money of the prices; absent where the price of the fuel is not known. */
  readonly cost?: readonly number[];
  /** kg of carbon dioxide from the fuel; that of electricity differs by grid and is left out. */
  readonly carbon: readonly number[];
}

export function yearMonths({ answer, cost }: YearOfUse, fuel: 'natural' | 'propane'): YearMonths {
  const { carbonDioxide } = properties.EMISSION_FACTORS[fuel];
  const current = cost?.electricity?.months ?? [];
  return {
    fuel: answer.fuel,
    ...(cost === undefined
      ? {}
      : { cost: cost.fuel.months.map((money, month) => money + (current[month] ?? 0)) }),
    carbon: answer.fuel.map((burnt) => burnt * carbonDioxide),
  };
}

const STANDS_ON = [
  'site',
  'climateMonths',
  'basins',
  'heaters',
  'gasSupply',
  'waterLoop',
  'pumpSpeeds',
] as const;
/** Of these a year knows nothing. */
const LEFT_OUT = new Set(['warmUpTime', 'startTemperature', 'designTemperature']);

/** The records a year stands on, so that another thread can make them a job again. */
export function yearStandsOn(view: JobView): PlainJob {
  const parts = STANDS_ON.map((collection): [string, PlainJob[string]] => {
    const spec = RECORD_BY_COLLECTION.get(collection);
    const fields = Object.keys(spec?.fields ?? {}).filter((field) => !LEFT_OUT.has(field));
    if (spec?.single) return [collection, plainRecord(view.record(collection, '-'), fields)];
    return [
      collection,
      view.all(collection).map((record) => ({ id: record.id, ...plainRecord(record, fields) })),
    ];
  });
  return Object.fromEntries(parts);
}

function plainRecord(record: RecordView, fields: readonly string[]): Record<string, unknown> {
  const read = fields.map((field) => [field, record.reading(field)] as const);
  return Object.fromEntries(read.filter(([, reading]) => reading !== undefined));
}
