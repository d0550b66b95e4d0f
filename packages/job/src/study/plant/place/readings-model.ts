/** The facts of the place line that are readings as they stand, each known or unknown by itself. */
import { Recorder } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { fieldFact } from '../../facts/field-fact.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Output, Parameter, Values } from '../model.ts';
import type { Source } from './sources.ts';

type Give = (values: Values) => Output;

/** One model for all of them, because a rule asks for few and a heater has many. */
export function readingsModel(view: JobView, id: string, sources: ReadonlyMap<FactKey, Source>): Model {
  const parameters = new Map<string, Parameter>();
  const gives = [...sources].map(([fact, source]) => giveOf(view, fact, source, parameters));
  return {
    id,
    provides: [...sources.keys()],
    parameters: [...parameters.values()],
    missing: [],
    wrong: [],
    run: (values) => ({ ok: true, outputs: gives.map((give) => give(values)) }),
    explain: (fact, values) => explained(view, sources.get(fact), values),
  };
}

function giveOf(view: JobView, fact: FactKey, source: Source, parameters: Map<string, Parameter>): Give {
  if (source === 'not-applicable') return () => ({ fact, notApplicable: true });
  if ('unknown' in source) return () => ({ fact, unknown: source.unknown });
  if ('usual' in source) return () => ({ fact, value: source.usual, kind: 'length', assumed: [] });
  const { collection, id, field } = source.at;
  const reading = readingPath(collection, id, field);
  const known = fieldFact(collection, field, view.record(collection, id).reading(field));
  if (known.state === 'word') {
    const assumed = known.assumed ? [reading] : [];
    return () => ({ fact, word: known.value, assumed });
  }
  if (known.state !== 'number') return () => ({ fact, unknown: [reading] });
  const { value, kind, plusMinus, assumed } = known;
  parameters.set(reading, { reading, value, kind, plusMinus, assumed });
  return (values) => ({ fact, value: values(reading), kind, assumed: assumed ? [reading] : [] });
}

function explained(view: JobView, source: Source | undefined, values: Values): Recorder['steps'] {
  const recorder = new Recorder();
  if (source === undefined || source === 'not-applicable' || 'unknown' in source) return recorder.steps;
  if ('usual' in source) {
    const known = { document: 'common practice', known: 'common practice, no source' } as const;
    recorder.given({ id: 'place.usual-clearance', value: source.usual, kind: 'length', source: known });
    return recorder.steps;
  }
  const { collection, id, field } = source.at;
  const reading = readingPath(collection, id, field);
  const known = fieldFact(collection, field, view.record(collection, id).reading(field));
  if (known.state === 'number')
    recorder.given({ id: 'reading', value: values(reading), kind: known.kind, reading });
  if (known.state === 'word') recorder.given({ id: 'reading', value: known.value, reading });
  return recorder.steps;
}
