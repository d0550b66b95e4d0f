/** What supplies the gas, against everything connected: meter, regulators, tank. Each is divided by its load. */
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate, byPractice } from '../known.ts';

export const meterCapacity = defineRule({
  id: 'gas.meter-capacity',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.meter-capacity', required: 'job.connected-load' },
  words: {},
  editions: byNameplate({}),
  check: (n) => atLeast(n.found, n.required, 'standard-gas-flow'),
});

export const regulatorCapacity = defineRule({
  id: 'gas.regulator-capacity',
  line: 'gas',
  scope: 'regulator',
  numbers: { found: 'regulator.capacity', required: 'regulator.load' },
  words: {},
  editions: byNameplate({}),
  check: (n) => atLeast(n.found, n.required, 'standard-gas-flow'),
});

/** A tank's vaporisation is an estimate of how much heat its wetted shell takes up: a wide guard. */
export const tankVaporisation = defineRule({
  id: 'gas.tank-vaporisation',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.tank-vaporisation', required: 'job.connected-input' },
  words: {},
  guard: 0.25,
  editions: byPractice({}),
  check: (n) => atLeast(n.found, n.required, 'heat-rate'),
});

function atLeast(found: number, required: number, kind: 'standard-gas-flow' | 'heat-rate') {
  if (required === 0) return { sense: 'does-not-apply' } as const;
  return { sense: 'at-least', required, found, kind, yardstick: required } as const;
}
