/** What a propane tank makes of its coldest day; natural gas has no tank. */
import { evaluate, gas, Recorder } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';

const FACT: FactKey = 'job/-/tank-vaporisation';
const DIAMETER = readingPath('gasSupply', '-', 'tankDiameter');
const LENGTH = readingPath('gasSupply', '-', 'tankLength');
const FILL = readingPath('gasSupply', '-', 'tankFill');
const WINTER = readingPath('site', '-', 'winterTemperature');

export function tankModel(reader: SurveyReader): Model {
  const propane = reader.word({ collection: 'gasSupply', id: '-', field: 'fuel' }) === 'propane';
  if (propane) {
    for (const field of ['tankDiameter', 'tankLength', 'tankFill']) {
      reader.number({ collection: 'gasSupply', id: '-', field });
    }
    reader.number({ collection: 'site', id: '-', field: 'winterTemperature' });
  }
  return {
    id: 'gas.tank',
    provides: [FACT],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      if (!propane) return { ok: true, outputs: [{ fact: FACT, notApplicable: true }] };
      const heat = evaluate(gas.tankVaporisation, tankInWinter(values));
      return heat.ok ? { ok: true, outputs: [{ fact: FACT, value: heat.value, kind: 'heat-rate' }] } : heat;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      if (propane) evaluate(gas.tankVaporisation, tankInWinter(values), recorder);
      return recorder.steps;
    },
  };
}

function tankInWinter(values: Values): gas.TankInWinter {
  return {
    diameter: values(DIAMETER),
    length: values(LENGTH),
    fill: values(FILL),
    airTemperature: values(WINTER),
  };
}
