import { combustion, fail, type Issue, ok, properties, type Result } from '@firstfire/engine';
import { failTyped } from '../engine-names.ts';
import { choice, defineSum, number } from '../sum.ts';

/** What a flue reading tells of a burner. */
export const flue = defineSum({
  name: 'flue',
  inputs: {
    fuel: choice(['natural', 'propane']),
    o2: number('ratio', '%', { optional: true }),
    co2: number('ratio', '%', { optional: true }),
    'stack-temperature': number('temperature', 'degF'),
    'air-temperature': number('temperature', 'degF'),
    altitude: number('length', 'ft', { optional: true, fallback: 0, min: -450, max: 5000 }),
  },
  outputs: {
    'excess-air': { kind: 'ratio', unit: '%' },
    'dew-point': { kind: 'temperature', unit: 'degF' },
    'gross-efficiency': { kind: 'ratio', unit: '%' },
    'net-efficiency': { kind: 'ratio', unit: '%' },
  },
  source: combustion.EFFICIENCY_SOURCE,
  example: {
    given: { fuel: 'natural', o2: '3 %', 'stack-temperature': '470 °F', 'air-temperature': '70 °F' },
    gives: { 'excess-air': '15.0 %', 'gross-efficiency': '80.4 %' },
    // The table lies 0.3 to 0.7 points under the heat balance.
    within: 0.008,
    source: {
      document: 'US DOE, Steam Tip Sheet 4',
      at: 'natural gas, 3 % oxygen, 400 °F',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    const sample = sampleOf(x.o2, x.co2);
    if (!sample.ok) return sample;
    const found = combustion.flueGas(combustion.COMBUSTION_FUELS[x.fuel], sample.value, {
      stackTemperature: x['stack-temperature'],
      airTemperature: x['air-temperature'],
      airPressure: properties.standardPressureAt(x.altitude ?? 0),
    });
    if (!found.ok) return failTyped(found.issues.map(named));
    return ok({
      'excess-air': found.value.excessAir,
      'dew-point': found.value.dewPoint,
      'gross-efficiency': found.value.grossEfficiency,
      'net-efficiency': found.value.netEfficiency,
    });
  },
});

function sampleOf(
  oxygen: number | undefined,
  carbonDioxide: number | undefined,
): Result<combustion.FlueSample> {
  if (oxygen !== undefined && carbonDioxide === undefined) return ok({ oxygen });
  if (carbonDioxide !== undefined && oxygen === undefined) return ok({ carbonDioxide });
  return fail({ code: 'ill-formed', where: 'o2', reason: 'give-one-of', expected: ['o2', 'co2'] });
}

const NAMES: Readonly<Record<string, string>> = { oxygen: 'o2', carbonDioxide: 'co2' };

/** A stack colder than its air is the one thing that the balance itself refuses. */
function named(issue: Issue): Issue {
  const where = issue.code === 'no-solution' ? 'stackTemperature' : issue.where;
  return { ...issue, where: NAMES[where] ?? where };
}
