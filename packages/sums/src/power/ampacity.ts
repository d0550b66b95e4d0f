import { evaluate, fail, ok, power } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { defineSum, number } from '../sum.ts';

/** What a copper conductor may carry where it runs. */
export const ampacity = defineSum({
  name: 'ampacity',
  inputs: {
    conductor: number('wire-size', 'AWG'),
    'insulation-temperature': number('temperature', 'degC', { min: 333.14, max: 363.16 }),
    'ambient-temperature': number('temperature', 'degC'),
    conductors: number('ratio', '1', { min: 1, max: 100 }),
  },
  outputs: { current: { kind: 'current', unit: 'A' } },
  source: power.AMPACITY_SOURCE,
  example: {
    given: {
      conductor: '12 AWG',
      'insulation-temperature': '75 °C',
      'ambient-temperature': '30 °C',
      conductors: '3',
    },
    gives: { current: '25 A' },
    within: 1e-9,
    source: catalog.power.AMPACITY_TABLE_SOURCE,
  },
  run: (x) => {
    const copper = catalog.power.copperOfArea(x.conductor);
    const tableCurrent = copper && catalog.power.tableAmpacity(copper, x['insulation-temperature']);
    if (tableCurrent === undefined) {
      return fail({
        code: 'not-understood',
        where: 'conductor',
        found: x.conductor,
        kind: 'wire-size',
        expected: catalog.power.COPPER_GAUGES,
      });
    }
    const current = evaluate(power.ampacity, {
      tableCurrent,
      insulation: x['insulation-temperature'],
      ambient: x['ambient-temperature'],
      conductors: x.conductors,
    });
    return current.ok ? ok({ current: current.value }) : current;
  },
});
