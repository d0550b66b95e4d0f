/** What the year of a basin stands on, taken from a survey. */
import type { SurveyReader, Where } from '../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../facts/view.ts';
import { takeShape } from '../plant/heat/basin-shape.ts';
import { takeDesignDay } from '../plant/heat/design-day.ts';
import { takeHeating } from '../plant/heat/heating.ts';

export type YearReadings = ReturnType<typeof takeYear>;

export function takeYear(reader: SurveyReader, id: string) {
  const at = (field: string): Where => ({ collection: 'basins', id, field });
  reader.number(at('setTemperature'));
  const burners = takeHeating(reader, id);
  return {
    id,
    shape: takeShape(reader, id),
    day: takeDesignDay(reader, id),
    burners,
    first: Number(reader.word(at('seasonFirst'))),
    last: Number(reader.word(at('seasonLast'))),
    weekends: reader.wordOr(at('days'), 'all') === 'weekends',
    setBack: takeTogether(reader, ['setBackTemperature', 'setBackFrom', 'setBackTo'].map(at)),
    motors: burners.map((burner) => takeMotor(reader, burner.id)),
  };
}

/** A choice of several numbers: whether it was made; once the first is known the others are needed. */
export function takeTogether(reader: SurveyReader, fields: readonly Where[]): boolean {
  const [first] = fields;
  if (first === undefined || !reader.has(first)) return false;
  for (const field of fields) reader.number(field);
  return true;
}

/** Volts and amperes of a heater's nameplate, where both are there. */
function takeMotor(reader: SurveyReader, id: string): readonly [ReadingPath, ReadingPath] | undefined {
  const fields = ['volts', 'amperes'].map((field): Where => ({ collection: 'heaters', id, field }));
  if (!fields.every((field) => reader.has(field))) return undefined;
  for (const field of fields) reader.number(field);
  return [readingPath('heaters', id, 'volts'), readingPath('heaters', id, 'amperes')];
}

export interface PriceReadings {
  /** Absent where it is not known. */
  readonly fuel?: ReadingPath;
  readonly electricity?: ReadingPath;
  readonly propane: boolean;
}

export function takePrices(reader: SurveyReader): PriceReadings {
  const fuel = takePrice(reader, { collection: 'gasSupply', id: '-', field: 'price' });
  const electricity = takePrice(reader, { collection: 'waterLoop', id: '-', field: 'electricityPrice' });
  return {
    ...(fuel ? { fuel } : {}),
    ...(electricity ? { electricity } : {}),
    propane: reader.word({ collection: 'gasSupply', id: '-', field: 'fuel' }) === 'propane',
  };
}

function takePrice(reader: SurveyReader, where: Where): ReadingPath | undefined {
  if (!reader.has(where)) return undefined;
  reader.number(where);
  return readingPath(where.collection, where.id, where.field);
}
