/** The greatest pressure the piping works at, from what locks up ahead of it. */
import { Recorder } from '@firstfire/engine';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import type { Model } from '../../model.ts';
import { readingPath } from '../../view.ts';

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
