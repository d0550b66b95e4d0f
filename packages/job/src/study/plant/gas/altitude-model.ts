/**
 * The input a heater has at its site: what the nameplate says for this altitude, else the code's default, once.
 * Gas is sized for the larger rated input unless the nameplate itself gives less; heat is counted with this one.
 */
import { gas, Recorder } from '@firstfire/engine';
import type { FactKey } from '../../book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import type { Model, Run, Values } from '../../model.ts';
import { readingPath } from '../../view.ts';

const ALTITUDE = readingPath('site', '-', 'altitude');

export function heaterInputModel(reader: SurveyReader, id: string): Model {
  const fact: FactKey = `heater/${id}/input-at-site`;
  const given = { collection: 'heaters', id, field: 'altitudeInput' };
  const byNameplate = reader.has(given);
  const field = byNameplate ? 'altitudeInput' : 'input';
  reader.number({ ...given, field });
  if (!byNameplate) reader.number({ collection: 'site', id: '-', field: 'altitude' });
  const country = reader.wordOr({ collection: 'site', id: '-', field: 'country' }, 'US');
  const rule = country === 'CA' ? gas.CANADA_DERATE : gas.US_DERATE;
  const input = readingPath('heaters', id, field);
  const derate = (values: Values, recorder?: Recorder) =>
    gas.inputAtAltitude(
      { basis: 'sea-level', heatInput: values(input) },
      { altitude: values(ALTITUDE), rule },
      recorder,
    );
  return {
    id: `heater.${id}.input`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values): Run => {
      if (byNameplate) return { ok: true, outputs: [{ fact, value: values(input), kind: 'heat-rate' }] };
      const found = derate(values);
      return found.ok
        ? { ok: true, outputs: [{ fact, value: found.value.heatInput, kind: 'heat-rate' }] }
        : found;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      recorder.given({ id: 'reading', value: values(input), kind: 'heat-rate', reading: input });
      if (!byNameplate) derate(values, recorder);
      return recorder.steps;
    },
  };
}
