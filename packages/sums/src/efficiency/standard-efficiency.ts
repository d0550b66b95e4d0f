import { efficiency, evaluate, type Issue, ok, type Result } from '@firstfire/engine';
import { failTyped } from '../engine-names.ts';
import { defineSum, number } from '../sum.ts';

/** Integrated thermal efficiency of a pool heater in the US test procedure’s standard year. */
export const standardEfficiency = defineSum({
  name: 'standard-efficiency',
  inputs: {
    'heat-input': number('heat-rate', 'kBtu/h', { min: 1000, max: 2e6 }),
    'thermal-efficiency': number('ratio', '%'),
    'burner-power': number('power', 'W', { optional: true, fallback: 0 }),
    pilot: number('heat-rate', 'Btu/h', { optional: true, fallback: 0 }),
    'off-heat': number('heat-rate', 'Btu/h', { optional: true, fallback: 0 }),
    'standby-power': number('power', 'W', { optional: true, fallback: 0 }),
    'off-power': number('power', 'W', { optional: true, fallback: 0 }),
  },
  outputs: {
    fuel: { kind: 'energy', unit: 'MMBtu' },
    electricity: { kind: 'energy', unit: 'kWh' },
    'heat-output': { kind: 'energy', unit: 'MMBtu' },
    efficiency: { kind: 'ratio', unit: '%' },
  },
  source: efficiency.APPENDIX_P_SOURCE,
  example: {
    given: {
      'heat-input': '250 kBtu/h',
      'thermal-efficiency': '82 %',
      'burner-power': '205.16 W',
      'standby-power': '8 W',
      'off-power': '5 W',
    },
    gives: { fuel: '26 MMBtu', efficiency: '81.4 %' },
    within: 0.0005,
    source: {
      ...efficiency.APPENDIX_P_SOURCE,
      at: 'arithmetic of a heater without a pilot, 700 Btu/h electric',
    },
  },
  run: (x) => {
    const heatInput = x['heat-input'];
    const burnerPower = x['burner-power'] ?? 0;
    const fuel = evaluate(efficiency.annualFuel, {
      heatInput,
      pilot: x.pilot ?? 0,
      offHeat: x['off-heat'] ?? 0,
    });
    const electricity = evaluate(efficiency.annualElectricity, {
      burnerPower,
      standbyPower: x['standby-power'] ?? 0,
      offPower: x['off-power'] ?? 0,
    });
    const thermalEfficiency = x['thermal-efficiency'];
    const output = evaluate(efficiency.annualOutput, { heatInput, burnerPower, thermalEfficiency });
    if (!fuel.ok || !electricity.ok || !output.ok) return failTyped(issuesOf(fuel, electricity, output));
    const year = { fuel: fuel.value, electricity: electricity.value, output: output.value };
    const integrated = evaluate(efficiency.integratedEfficiency, year);
    if (!integrated.ok) return failTyped(integrated.issues);
    return ok({
      fuel: year.fuel,
      electricity: year.electricity,
      'heat-output': year.output,
      efficiency: integrated.value,
    });
  },
});

/** The issues of whichever failed, each input named once. */
function issuesOf(...results: readonly Result<number>[]): readonly Issue[] {
  const all = results.flatMap((one) => (one.ok ? [] : one.issues));
  return all.filter((issue, at) => all.findIndex((other) => other.where === issue.where) === at);
}
