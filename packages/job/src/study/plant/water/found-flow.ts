/**
 * The flow of a new heater from the flow found through the old one, for a swap whose loop nobody has read: the flow as
 * found times the share of it that the new heater lets through. It is the flow with the filter as it was found, taken
 * as clean; of a filter that is due it says nothing.
 *
 * Where the loop can be solved, the loop goes before it. Several heaters or several heating speeds share one figure in
 * no known way: then it stands for none.
 */
import { Recorder } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { flowFact } from './flow-part.ts';
import type { Part } from './part.ts';
import type { WaterPlan } from './water-plan.ts';

const FOUND = { collection: 'waterLoop', id: '-', field: 'flowFound' } as const;
const SHARE = { collection: 'waterLoop', id: '-', field: 'flowShare' } as const;

/** Undefined where nobody has begun to say that the flow as found stands for the loop. */
export function foundFlowModel(view: JobView, { states, heaters }: WaterPlan): Model | undefined {
  const clean = states.heaters.filter(({ filter }) => filter === 'clean');
  const reader = new SurveyReader(view);
  if (clean.length !== 1 || heaters.length !== 1) return undefined;
  if (!reader.has(FOUND) && !reader.has(SHARE)) return undefined;
  reader.number(FOUND);
  reader.number(SHARE);
  const provides = clean.map(flowFact);
  return {
    id: 'water.found-flow',
    provides,
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => ({
      ok: true,
      outputs: provides.map((fact) => ({ fact, value: flow(values), kind: 'volume-flow' })),
    }),
    explain: (_fact: FactKey, values) => {
      const recorder = new Recorder();
      recorder.given({ id: 'reading', value: found(values), kind: 'volume-flow', reading: pathOf(FOUND) });
      recorder.given({ id: 'reading', value: share(values), kind: 'ratio', reading: pathOf(SHARE) });
      return recorder.steps;
    },
  };
}

function flow(values: Values): number {
  return found(values) * share(values);
}

function found(values: Values): number {
  return values(pathOf(FOUND));
}

function share(values: Values): number {
  return values(pathOf(SHARE));
}

function pathOf({ collection, id, field }: typeof FOUND | typeof SHARE) {
  return readingPath(collection, id, field);
}

/** Whether a part cannot run and gives nothing that the flow as found does not give. */
export function isStoodFor({ provides, reader }: Part, isLacking: boolean, model: Model): boolean {
  const isWaiting = isLacking || reader.missing.length + reader.wrong.length > 0;
  return isWaiting && provides.every((fact) => model.provides.includes(fact));
}
