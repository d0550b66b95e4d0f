/** The circuit that feeds the heater: voltage, selector, wire, breaker. Work on it is a licensed electrician’s. */
import { defineRule, type Edition, type Outcome } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';

/** Equipment is made for its voltage within a tenth of it either way; a band is divided by half its width. */
const TENTH = 0.1;

function near(found: number, nominal: number): Outcome {
  return { sense: 'within', low: nominal * (1 - TENTH), high: nominal * (1 + TENTH), found, kind: 'voltage' };
}

export const voltageIdle = defineRule({
  id: 'power.voltage-idle',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.volts-idle', nominal: 'heater.volts' },
  words: {},
  editions: byPractice({}),
  check: (n) => near(n.found, n.nominal),
});

export const voltageRunning = defineRule({
  id: 'power.voltage-running',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.volts-running', nominal: 'heater.volts' },
  words: {},
  editions: byPractice({}),
  check: (n) => near(n.found, n.nominal),
});

/** The supply as measured against the tap the selector stands at, in both directions. */
export const selectorMatches = defineRule({
  id: 'power.selector',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.volts-idle' },
  words: { selector: 'heater.selector' },
  editions: byPractice({}),
  check: (n, w) => near(n.found, Number(w.selector)),
});

/** Divided by the load. */
export const wireCarriesLoad = defineRule({
  id: 'power.wire-carries-load',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.wire-ampacity', required: 'heater.amperes' },
  words: {},
  editions: nec('310.15 and Table 310.16', 'read in a public copy', {}),
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required: n.required, found: n.found, kind: 'current', yardstick: n.required },
});

/** Divided by the largest breaker allowed; a breaker of just that rating is what is usually fitted. */
export const breakerProtectsWire = defineRule({
  id: 'power.breaker-protects-wire',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.breaker', required: 'heater.breaker-most' },
  words: {},
  guard: 0,
  editions: nec('240.4(D) and Table 310.16', 'read in a public copy', {}),
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'current',
    yardstick: n.required,
  }),
});

/** Divided by the limit. A recommendation, not a rule: an informational note of the code. */
export const dropSmall = defineRule({
  id: 'power.voltage-drop',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.voltage-drop' },
  words: {},
  editions: nec('210.19(A) informational note, recommended', 'from memory', { share: 0.03 }),
  check: (n, _w, values) => ({
    sense: 'at-most',
    required: values.share,
    found: n.found,
    kind: 'ratio',
    yardstick: values.share,
  }),
});

function nec<V>(
  at: string,
  known: 'from memory' | 'read in a public copy',
  values: V,
): readonly Edition<V>[] {
  return [
    {
      edition: 'NEC 2011',
      from: '2010-08-25',
      source: { document: 'National Electrical Code 2011', at, known },
      values,
    },
  ];
}
