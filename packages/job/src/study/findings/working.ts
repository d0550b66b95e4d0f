/** The working of a finding: every fact it stands on, down to formula, reading and source. */
import { Recorder, type Step } from '@firstfire/engine';
import { type AnyRule, type Finding, findingId, RULES } from '@firstfire/reference';
import { type FactKey, keyOf } from '../facts/book.ts';
import { directReading } from '../facts/direct.ts';
import { fieldFact } from '../facts/field-fact.ts';
import type { JobView } from '../facts/view.ts';
import { ownValues } from '../plant/model.ts';
import { plantModels } from '../plant/models.ts';
import { type StudyOptions, study } from './study.ts';

export interface WorkedFact {
  /** Name of the fact as the rule asks for it. */
  readonly fact: string;
  readonly steps: readonly Step[];
}

export interface Working {
  readonly finding: Finding;
  readonly facts: readonly WorkedFact[];
}

/** The working of the finding with that id; undefined when the job has none such. */
export function workingOf(view: JobView, id: string, options: StudyOptions): Working | undefined {
  const finding = study(view, options)
    .lines.flatMap((line) => line.findings)
    .find((one) => findingId(one) === id);
  const rule = RULES.find((one) => one.id === finding?.rule);
  if (finding === undefined || rule === undefined) return undefined;
  return {
    finding,
    facts: factNames(rule).map((fact) => ({ fact, steps: stepsOf(view, keyOf(finding.subject, fact)) })),
  };
}

function factNames(rule: AnyRule) {
  return [...Object.values(rule.numbers), ...Object.values(rule.words)];
}

function stepsOf(view: JobView, key: FactKey): readonly Step[] {
  const model = plantModels(view).find((one) => one.provides.includes(key));
  if (model === undefined) return readingStep(view, key);
  if (model.missing.length > 0 || model.wrong.length > 0) return [];
  return model.explain(key, ownValues(model));
}

function readingStep(view: JobView, key: FactKey): readonly Step[] {
  const at = directReading(key);
  if (at === undefined) return [];
  const { collection, id, field } = at;
  const fact = fieldFact(collection, field, view.record(collection, id).reading(field));
  const recorder = new Recorder();
  const reading = `${collection}/${id}/${field}`;
  if (fact.state === 'number') recorder.given({ id: 'reading', value: fact.value, kind: fact.kind, reading });
  if (fact.state === 'word') recorder.given({ id: 'reading', value: fact.value, reading });
  return recorder.steps;
}
