/** A model of one number: what finds it, with or without a recorder. */
import { type quantity, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import type { ReadingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';

export interface NumberSpec {
  readonly fact: FactKey;
  readonly kind: quantity.Kind;
  readonly reader: SurveyReader;
  readonly find: (values: Values, recorder?: Recorder) => Result<number>;
  /** Words that nobody read and that a usual one stands for. */
  readonly assumed?: readonly ReadingPath[];
}

export function numberModel({ fact, kind, reader, find, assumed = [] }: NumberSpec): Model {
  const { parameters, missing, wrong } = reader;
  const rests = [...parameters.filter((one) => one.assumed).map((one) => one.reading), ...assumed];
  return {
    id: `power.${fact}`,
    provides: [fact],
    parameters,
    missing,
    wrong,
    run: (values) => {
      const found = find(values);
      if (!found.ok) return found;
      return { ok: true, outputs: [{ fact, value: found.value, kind, assumed: rests }] };
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      find(values, recorder);
      return recorder.steps;
    },
  };
}
