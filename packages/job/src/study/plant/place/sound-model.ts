/** How loud the heater is at the property line, from its nameplate. */
import { evaluate, ok, place, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { notApplicable } from '../passed-on.ts';
import { type Plan, parametersOf } from './plan.ts';
import { nearest, situation } from './plan-model.ts';
import { isKnown, isOutdoors, type Site } from './sources.ts';

export function soundModel(site: Site, plan: Plan | undefined): Model {
  const { view, heater, spot } = site;
  const fact: FactKey = `heater/${heater}/sound-at-line`;
  if (!isOutdoors(site)) return notApplicable(fact);
  const line: Where = { collection: 'spots', id: spot, field: 'propertyLine' };
  const drawn = isKnown(view, line) || plan === undefined ? undefined : withLine(plan);
  const reader = drawn?.reader.fork() ?? new SurveyReader(view);
  for (const field of ['soundLevel', 'soundDistance'])
    reader.number({ collection: 'heaters', id: heater, field });
  if (drawn === undefined) reader.number(line);
  const distance = (values: Values): Result<number> => {
    if (drawn === undefined) return ok(values(readingPath('spots', spot, 'propertyLine')));
    const found = situation(drawn, values);
    return found.ok ? ok(nearest('property line', found.value) ?? Number.NaN) : found;
  };
  const close: ReadingPath = readingPath('heaters', heater, 'soundDistance');
  const level = (values: Values, recorder?: Recorder): Result<number | undefined> => {
    const far = distance(values);
    if (!far.ok) return far;
    const referenceDistance = values(close);
    if (far.value < referenceDistance) return ok(undefined);
    const at = { level: values(readingPath('heaters', heater, 'soundLevel')), referenceDistance };
    return evaluate(place.soundAtDistance, { ...at, distance: far.value }, recorder);
  };
  return {
    id: `place.sound.${heater}`,
    provides: [fact],
    parameters: drawn === undefined ? reader.parameters : parametersOf({ ...drawn, reader }),
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const found = level(values);
      if (!found.ok) return found;
      // Nearer than the nameplate's figure was measured, it says nothing.
      if (found.value === undefined) return { ok: true, outputs: [{ fact, unknown: [close] }] };
      return { ok: true, outputs: [{ fact, value: found.value, kind: 'sound-level' }] };
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      level(values, recorder);
      return recorder.steps;
    },
  };
}

/** The plan where it shows the property line. */
function withLine(plan: Plan): Plan | undefined {
  return plan.objects.some(({ kind }) => kind === 'property line') ? plan : undefined;
}
