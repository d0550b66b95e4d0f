/**
 * The input a heater has at its site: what the nameplate says for this altitude, else the code's default, once.
 * Gas is sized for the larger rated input unless the nameplate itself gives less; heat is counted with this one.
 */
import { fail, gas, ok, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Model, Run, Values } from '../model.ts';

const ALTITUDE = readingPath('site', '-', 'altitude');

/** Input (W) of a heater at its site, from the readings it was taken with. */
export type HeaterInput = (values: Values, recorder?: Recorder) => Result<number>;

/** Takes what the input at the site stands on. */
export function takeHeaterInput(reader: SurveyReader, id: string): HeaterInput {
  const given = { collection: 'heaters', id, field: 'altitudeInput' };
  const byNameplate = reader.has(given);
  const field = byNameplate ? 'altitudeInput' : 'input';
  reader.number({ ...given, field });
  if (!byNameplate) reader.number({ collection: 'site', id: '-', field: 'altitude' });
  const country = reader.wordOr({ collection: 'site', id: '-', field: 'country' }, 'US');
  const rule = country === 'CA' ? gas.CANADA_DERATE : gas.US_DERATE;
  const input = readingPath('heaters', id, field);
  return (values, recorder) => {
    recorder?.given({ id: 'reading', value: values(input), kind: 'heat-rate', reading: input });
    if (byNameplate) return ok(values(input));
    const site = { altitude: values(ALTITUDE), rule };
    const found = gas.inputAtAltitude({ basis: 'sea-level', heatInput: values(input) }, site, recorder);
    if (found.ok) return ok(found.value.heatInput);
    const own: Readonly<Record<string, string>> = { altitude: ALTITUDE, heatInput: input };
    return fail(...found.issues.map((issue) => ({ ...issue, where: own[issue.where] ?? issue.where })));
  };
}

export function heaterInputModel(reader: SurveyReader, id: string): Model {
  const fact: FactKey = `heater/${id}/input-at-site`;
  const input = takeHeaterInput(reader, id);
  return {
    id: `heater.${id}.input`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values): Run => {
      const found = input(values);
      return found.ok ? { ok: true, outputs: [{ fact, value: found.value, kind: 'heat-rate' }] } : found;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      input(values, recorder);
      return recorder.steps;
    },
  };
}
