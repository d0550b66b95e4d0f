/** A model of one number about one heater, which may not apply to it at all. */
import { type quantity, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import type { ReadingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';

export interface Answer {
  readonly fact: FactKey;
  readonly kind: quantity.Kind;
  readonly reader: SurveyReader;
  /** Words nobody told, for which the usual one stands. */
  readonly assumed?: readonly ReadingPath[];
  readonly find: (values: Values, recorder?: Recorder) => Result<number>;
}

export function answers({ fact, kind, reader, find, assumed = [] }: Answer): Model {
  const readings = reader.parameters.filter((one) => one.assumed).map((one) => one.reading);
  const resting = assumed.length > 0 ? { assumed: [...assumed, ...readings] } : {};
  return {
    id: `air.${fact}`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const found = find(values);
      return found.ok ? { ok: true, outputs: [{ fact, value: found.value, kind, ...resting }] } : found;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      find(values, recorder);
      return recorder.steps;
    },
  };
}
