/** The relief valve of each heater: whether it needs one, and what the one it has can bear. */
import { evaluate, Recorder, relief } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { notApplicable, passedOn } from '../passed-on.ts';

/** Facts of a valve that is there → field. */
const PASSED: Readonly<Record<string, string>> = {
  'relief-set': 'reliefSet',
  'relief-discharge': 'reliefDischarge',
  'relief-discharge-height': 'reliefDischargeHeight',
};

export function reliefModels(view: JobView): readonly Model[] {
  return plannedHeaters(view).flatMap((heater) => {
    const reader = new SurveyReader(view);
    const at = (field: string): Where => ({ collection: 'heaters', id: heater, field });
    const needed = need(reader, heater);
    const fitted = reader.wordOr(at('reliefValve'), '');
    const key = (name: string): FactKey => `heater/${heater}/${name}`;
    const there = fitted !== 'no' && !(needed.word === 'no' && fitted === '');
    return [
      needed.model,
      needed.word === 'no'
        ? notApplicable(key('relief-valve'))
        : passedOn(view, key('relief-valve'), at('reliefValve')),
      ...Object.entries(PASSED).map(([name, field]) =>
        there ? passedOn(view, key(name), at(field)) : notApplicable(key(name)),
      ),
      there ? capacityModel(view, heater) : notApplicable(key('relief-capacity')),
    ];
  });
}

/** A plate that asks for it, or something behind the heater that can hold the water back: either is enough. */
function need(reader: SurveyReader, heater: string): { readonly word: string; readonly model: Model } {
  const fact: FactKey = `heater/${heater}/relief-needed`;
  const asked: readonly Where[] = [
    { collection: 'heaters', id: heater, field: 'reliefAsked' },
    { collection: 'heaters', id: heater, field: 'isolated' },
    { collection: 'waterLoop', id: '-', field: 'checkValve' },
  ];
  const words = asked.map((where) => reader.wordOr(where, ''));
  const known = words.includes('yes') ? 'yes' : words.every((word) => word === 'no') ? 'no' : '';
  const unread = asked.filter((_, k) => words[k] === '');
  const reading = asked[Math.max(0, words.indexOf('yes'))] as Where;
  const model: Model = {
    id: `water.relief-needed.${heater}`,
    provides: [fact],
    parameters: [],
    missing:
      known === '' ? unread.map(({ collection, id, field }) => readingPath(collection, id, field)) : [],
    wrong: reader.wrong,
    run: () => ({ ok: true, outputs: [{ fact, word: known }] }),
    explain: () => {
      const recorder = new Recorder();
      const path = readingPath(reading.collection, reading.id, reading.field);
      recorder.given({ id: 'reading', value: known, reading: path });
      return recorder.steps;
    },
  };
  return { word: known, model };
}

/** Heat the valve carries off, as its tag says or from the steam on its tag. */
function capacityModel(view: JobView, heater: string): Model {
  const fact: FactKey = `heater/${heater}/relief-capacity`;
  const steam: Where = { collection: 'heaters', id: heater, field: 'reliefSteam' };
  const heat: Where = { ...steam, field: 'reliefCapacity' };
  const reader = new SurveyReader(view);
  if (reader.has(heat) || !reader.has(steam)) return passedOn(view, fact, heat);
  reader.number(steam);
  const path = readingPath('heaters', heater, 'reliefSteam');
  return {
    id: `water.relief-capacity.${heater}`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const found = evaluate(relief.reliefHeat, { steam: values(path) });
      return found.ok ? { ok: true, outputs: [{ fact, value: found.value, kind: 'heat-rate' }] } : found;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      evaluate(relief.reliefHeat, { steam: values(path) }, recorder);
      return recorder.steps;
    },
  };
}
