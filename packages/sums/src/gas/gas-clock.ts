import { evaluate, gas, ok, properties } from '@firstfire/engine';
import { choice, defineSum, number } from '../sum.ts';

/** Heat input from the turns of a meter's test dial against a stopwatch. */
export const gasClock = defineSum({
  name: 'gas-clock',
  inputs: {
    dial: number('metered-gas-volume', 'ft3'),
    revolutions: number('ratio', '1'),
    seconds: number('time', 's'),
    'heating-value': number('heating-value', 'Btu/ft3', { min: 5e6, max: 150e6 }),
    'gas-pressure': number('pressure', 'in w.c.', { min: 0, max: 1e6 }),
    'gas-temperature': number('temperature', 'degF'),
    altitude: number('length', 'ft'),
    barometer: number('absolute-pressure', 'inHg', { optional: true, min: 60_000, max: 110_000 }),
    compensation: { ...choice(['none', 'temperature', 'temperature-and-pressure']), optional: true },
  },
  outputs: {
    flow: { kind: 'metered-gas-flow', unit: 'ft3/h' },
    'standard-flow': { kind: 'standard-gas-flow', unit: 'ft3/h' },
    'heat-input': { kind: 'heat-rate', unit: 'kBtu/h' },
  },
  source: gas.CLOCK_SOURCE,
  example: {
    given: {
      dial: '5 ft3',
      revolutions: '1',
      seconds: '20 s',
      'heating-value': '1000 Btu/ft3',
      'gas-pressure': '10 psi',
      'gas-temperature': '45 degF',
      altitude: '278 ft',
    },
    gives: { flow: '900 ft3/h', 'standard-flow': '1544.49 ft3/h' },
    within: 0.0003,
    source: {
      document: 'Gas technician training text, Unit 11',
      at: 'second clocking example, 14.55 psia (the standard atmosphere of 278 ft)',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    const standard = evaluate(properties.standardPressure, { altitude: x.altitude });
    if (!standard.ok) return standard;
    const clocked = gas.clockMeter({
      dial: x.dial,
      revolutions: x.revolutions,
      seconds: x.seconds,
      // The spread of the stopwatch is for a study; a sum gives the value.
      secondsUncertainty: 0,
      heatingValue: x['heating-value'],
      gaugePressure: x['gas-pressure'],
      atmosphere: x.barometer ?? standard.value,
      temperature: x['gas-temperature'],
      compensation: x.compensation ?? 'none',
    });
    if (!clocked.ok) return clocked;
    const { flow, standardFlow, heatInput } = clocked.value;
    return ok({
      flow: flow.value,
      'standard-flow': standardFlow.value,
      'heat-input': heatInput.value,
    });
  },
});
