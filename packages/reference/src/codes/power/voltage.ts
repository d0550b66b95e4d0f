/** The voltage that reaches the heater, and the tap its selector stands at. Work on it is a licensed electrician’s. */
import { power } from '@firstfire/engine';
import { type AnyRule, defineRule, type Edition, type Outcome, reaches } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';
import { c22, nec2011 } from './sources.ts';

/** Equipment is made for its voltage within a tenth of it either way; a band is divided by half its width. */
const TENTH = 0.1;

function near(found: number, nominal: number): Outcome & { readonly sense: 'within' } {
  return { sense: 'within', low: nominal * (1 - TENTH), high: nominal * (1 + TENTH), found, kind: 'voltage' };
}

function nearNameplate(id: string, found: 'heater.volts-idle' | 'heater.volts-running'): AnyRule {
  return defineRule({
    id,
    line: 'power',
    scope: 'heater',
    numbers: { found, nominal: 'heater.volts' },
    words: {},
    editions: byPractice({}),
    check: (n) => near(n.found, n.nominal),
  });
}

export const voltageIdle = nearNameplate('power.voltage-idle', 'heater.volts-idle');
export const voltageRunning = nearNameplate('power.voltage-running', 'heater.volts-running');

/** Voltages that heaters’ control transformers have a tap for. Common practice, no source. */
const TAPS = [120, 208, 240];

/** The supply as measured against the tap the selector stands at, in both directions. */
export const selectorMatches = defineRule({
  id: 'power.selector',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.volts-idle' },
  words: { selector: 'heater.selector' },
  editions: byPractice({}),
  check: (n, w) => {
    const band = near(n.found, Number(w.selector));
    if (reaches(n.found, band.low) && reaches(band.high, n.found)) return band;
    const fits = power.bestTap({ supplyVolts: n.found, taps: TAPS, tolerance: TENTH }).ok;
    const reason = n.found > band.high ? 'tap-too-low' : 'tap-too-high';
    return { ...band, because: { reason: fits ? reason : 'no-tap-fits' } };
  },
});

/** Contactors and relays are made to pull in from 85 % of their voltage and to bear 110 % of it. */
function byCoil<V>(values: V): readonly Edition<V>[] {
  return [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'IEC 60947-4-1',
        at: 'limits of operation of contactors',
        known: 'from memory',
      },
      values,
    },
  ];
}

/** Control circuits of heaters are made for 24 V; common practice. */
const CONTROL_VOLTS = 24;

export const controlVoltage = defineRule({
  id: 'power.control-voltage',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.control-volts' },
  words: {},
  editions: byCoil({ low: 0.85, high: 1.1 }),
  check: (n, _w, values) => ({
    sense: 'within',
    low: values.low * CONTROL_VOLTS,
    high: values.high * CONTROL_VOLTS,
    found: n.found,
    kind: 'voltage',
  }),
});

/** Divided by what may be lost: the share of the nameplate’s voltage between all of it and the least. */
export const voltageAtStart = defineRule({
  id: 'power.voltage-at-start',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.volts-at-start', nominal: 'heater.volts' },
  words: {},
  editions: byCoil({ low: 0.85 }),
  check: (n, _w, values) => ({
    sense: 'at-least',
    required: values.low * n.nominal,
    found: n.found,
    kind: 'voltage',
    yardstick: (1 - values.low) * n.nominal,
  }),
});

/** Divided by the limit. In the United States a recommendation: an informational note of the code. */
export const voltageDrop = defineRule({
  id: 'power.voltage-drop',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.voltage-drop' },
  words: {},
  editions: [
    nec2011('210.19(A) informational note 4, a recommendation', { share: 0.03 }),
    c22('rule 8-102', { share: 0.03 }),
  ],
  check: (n, _w, { share }) => ({
    sense: 'at-most',
    required: share,
    found: n.found,
    kind: 'ratio',
    yardstick: share,
  }),
});

/** The same of feeder and branch together, as the voltmeter at the heater shows it; divided by the limit. */
export const supplySag = defineRule({
  id: 'power.supply-sag',
  line: 'power',
  scope: 'heater',
  numbers: { idle: 'heater.volts-idle', running: 'heater.volts-running' },
  words: {},
  editions: [
    nec2011('215.2(A) informational note 2, a recommendation', { share: 0.05 }),
    c22('rule 8-102', { share: 0.05 }),
  ],
  check: (n, _w, { share }) =>
    n.idle <= 0
      ? { sense: 'does-not-apply' }
      : {
          sense: 'at-most',
          required: share,
          found: 1 - n.running / n.idle,
          kind: 'ratio',
          yardstick: share,
        },
});
