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

const READINGS: Readonly<Record<string, string>> = {
  diameter: DIAMETER,
  length: LENGTH,
  fill: FILL,
  airTemperature: WINTER,
};

/** At −20 °F the rule has nothing left, K. Colder air gives no more, so that there it is not asked further. */
const NOTHING_AT = (459.67 - 20) / 1.8;

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
      if (heat.ok) return { ok: true, outputs: [{ fact: FACT, value: heat.value, kind: 'heat-rate' }] };
      const issues = heat.issues.map((issue) => ({ ...issue, where: READINGS[issue.where] ?? issue.where }));
      return { ok: false, issues };
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
    airTemperature: Math.max(NOTHING_AT, values(WINTER)),
  };
}
