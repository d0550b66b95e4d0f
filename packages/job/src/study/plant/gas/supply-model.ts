/** What stands ahead of the piping: the pressure it locks up at, and the meter, where there is one. */
import { Recorder } from '@firstfire/engine';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Model } from '../model.ts';

const LOCK_UP = readingPath('gasSupply', '-', 'lockUpPressure');

export function workingPressureModel(reader: SurveyReader): Model {
  reader.number({ collection: 'gasSupply', id: '-', field: 'lockUpPressure' });
  return {
    id: 'gas.working-pressure',
    provides: ['job/-/working-pressure-greatest'],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => ({
      ok: true,
      outputs: [{ fact: 'job/-/working-pressure-greatest', value: values(LOCK_UP), kind: 'pressure' }],
    }),
    explain: (_fact, values) => {
      const recorder = new Recorder();
      recorder.given({ id: 'reading', value: values(LOCK_UP), kind: 'pressure', reading: LOCK_UP });
      return recorder.steps;
    },
  };
}

const BADGE = readingPath('gasSupply', '-', 'meterBadge');

/** A tank’s gas passes no meter, unless someone says it does. */
export function meterModel(reader: SurveyReader): Model {
  const badge = { collection: 'gasSupply', id: '-', field: 'meterBadge' };
  const tank = reader.wordOr({ ...badge, field: 'fuel' }, '') === 'propane' && !reader.has(badge);
  if (!tank) reader.number(badge);
  const fact = 'job/-/meter-capacity';
  return {
    id: 'gas.meter',
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => ({
      ok: true,
      outputs: [
        tank ? { fact, notApplicable: true } : { fact, value: values(BADGE), kind: 'standard-gas-flow' },
      ],
    }),
    explain: (_fact, values) => {
      const recorder = new Recorder();
      if (!tank)
        recorder.given({ id: 'reading', value: values(BADGE), kind: 'standard-gas-flow', reading: BADGE });
      return recorder.steps;
    },
  };
}
