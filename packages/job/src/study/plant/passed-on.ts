/** A fact that is one reading of another record: a heater's circuit, a heater's spot. */
import { Recorder } from '@firstfire/engine';
import type { FactKey } from '../facts/book.ts';
import { SurveyReader, type Where } from '../facts/survey-reader.ts';
import { type JobView, readingPath } from '../facts/view.ts';
import type { Model, Output } from './model.ts';

/** The fact, whether it is a number or a word; unknown names the reading. */
export function passedOn(view: JobView, fact: FactKey, where: Where): Model {
  const reader = new SurveyReader(view);
  const known = reader.fact(where);
  const reading = readingPath(where.collection, where.id, where.field);
  if (known.state === 'number') reader.number(where);
  else reader.word(where);
  const word = known.state === 'word' ? known.value : '';
  const assumed = known.state === 'word' && known.assumed ? { assumed: [reading] } : {};
  return {
    id: `passed.${fact}`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const output: Output =
        known.state === 'number'
          ? { fact, value: values(reading), kind: known.kind }
          : { fact, word, ...assumed };
      return { ok: true, outputs: [output] };
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      if (known.state === 'number')
        recorder.given({ id: 'reading', value: values(reading), kind: known.kind, reading });
      else recorder.given({ id: 'reading', value: word, reading });
      return recorder.steps;
    },
  };
}

/** A fact that does not apply here, so that nobody is asked for its reading. */
export function notApplicable(fact: FactKey): Model {
  return {
    id: `none.${fact}`,
    provides: [fact],
    parameters: [],
    missing: [],
    wrong: [],
    run: () => ({ ok: true, outputs: [{ fact, notApplicable: true }] }),
    explain: () => [],
  };
}

/** The same of many facts at once; a study has hundreds that do not apply. */
export function noneApply(id: string, facts: readonly FactKey[]): Model {
  const outputs = facts.map((fact): Output => ({ fact, notApplicable: true }));
  return {
    id: `none.${id}`,
    provides: facts,
    parameters: [],
    missing: [],
    wrong: [],
    run: () => ({ ok: true, outputs }),
    explain: () => [],
  };
}

/** A fact of which nobody can say whether it applies until another reading is there. */
export function askedFirst(fact: FactKey, { collection, id, field }: Where): Model {
  return { ...notApplicable(fact), missing: [readingPath(collection, id, field)] };
}
