/** What the energy codes ask of the heater itself: ignition, switch, timer, efficiency. */
import { quantity } from '@firstfire/engine';
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { cfr430, iecc2015, title24 } from '../entries.ts';
import { isRepair } from './new-work.ts';

const READ = 'read in a public copy';

interface Pilot {
  readonly fuels: readonly string[];
}

const pilots: readonly Edition<Pilot>[] = [
  iecc2015('R403.10.1', { fuels: ['natural', 'propane'] }),
  title24('110.5, natural gas', { fuels: ['natural'] }, READ),
];

export const noPilot = defineRule({
  id: 'heat.no-pilot',
  line: 'heat',
  scope: 'heater',
  numbers: {},
  words: { ignition: 'heater.ignition', fuel: 'heater.fuel', kind: 'job.kind' },
  optional: ['ignition', 'kind'],
  editions: pilots,
  check: (_n, w, { fuels }) => {
    if (!fuels.includes(w.fuel) || isRepair(w)) return { sense: 'does-not-apply' };
    return w.ignition === ''
      ? { sense: 'unread' }
      : { sense: 'holds', holds: w.ignition !== 'standing pilot' };
  },
});

interface Switch {
  /** Whether a switch beside the heater does, or only one on it. */
  readonly beside: boolean;
}

const switches: readonly Edition<Switch>[] = [
  iecc2015('R403.10.1, on the heater or within 3 ft of it', { beside: true }),
  title24('110.4(a)2, on the outside of the heater', { beside: false }),
];

/** One that turns the heater off and leaves the thermostat as it is. */
export const offSwitch = defineRule({
  id: 'power.off-switch',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { at: 'heater.off-switch', kind: 'job.kind' },
  optional: ['at', 'kind'],
  editions: switches,
  check: (_n, w, { beside }) => {
    if (isRepair(w)) return { sense: 'does-not-apply' };
    if (w.at === '') return { sense: 'unread' };
    return { sense: 'holds', holds: w.at === 'on the heater' || (beside && w.at === 'beside it') };
  },
});

/** Where it stands beside the heater. Divided by the limit. */
export const offSwitchDistance = defineRule({
  id: 'power.off-switch-distance',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.off-switch-distance' },
  words: { at: 'heater.off-switch', kind: 'job.kind' },
  optional: ['found', 'at', 'kind'],
  guard: 0,
  editions: [iecc2015('R403.10.1, within 3 ft', { limit: 3 * quantity.FOOT })],
  check: (n, w, { limit }) => {
    if (w.at !== 'beside it' || isRepair(w)) return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-most', required: limit, found: n.found, kind: 'length', yardstick: limit };
  },
});

export const timeSwitch = defineRule({
  id: 'power.time-switch',
  line: 'power',
  scope: 'job',
  numbers: {},
  words: { timer: 'job.timer', kind: 'job.kind' },
  optional: ['timer', 'kind'],
  editions: [iecc2015('R403.10.2, heaters and pump motors', {}), title24('110.4(b)3, pumps', {})],
  check: (_n, w) => {
    if (w.timer === 'health rules run it all day' || isRepair(w)) return { sense: 'does-not-apply' };
    return w.timer === '' ? { sense: 'unread' } : { sense: 'holds', holds: w.timer === 'yes' };
  },
});

/** Least thermal efficiency of a heater made from that day on. */
interface Step {
  readonly from: string;
  readonly least: number;
}

const steps: readonly Step[] = [
  { from: '2013-04-16', least: 0.82 },
  { from: '1990-01-01', least: 0.78 },
];

/** From that day on the law speaks of another figure. */
const INTEGRATED_FROM = '2028-05-30';

/** By the day of manufacture; a month stands for its first day. Divided by the efficiency asked. */
export const efficiencyLeast = defineRule({
  id: 'heat.efficiency-least',
  line: 'heat',
  scope: 'heater',
  numbers: { found: 'heater.efficiency' },
  words: { made: 'heater.made' },
  guard: 0,
  editions: [cfr430('430.32(k), thermal efficiency by the test of appendix P', { steps })],
  check: (n, w, values) => {
    const step = w.made >= INTEGRATED_FROM ? undefined : values.steps.find(({ from }) => w.made >= from);
    if (step === undefined) return { sense: 'does-not-apply' };
    const required = step.least;
    return { sense: 'at-least', required, found: n.found, kind: 'ratio', yardstick: required };
  },
});

/** 84·(Q + 491)/(Q + 2536) per cent, Q in Btu/h. Divided by the efficiency asked. */
export const integratedEfficiency = defineRule({
  id: 'heat.integrated-efficiency',
  line: 'heat',
  scope: 'heater',
  numbers: { found: 'heater.integrated-efficiency', input: 'heater.input' },
  words: { made: 'heater.made' },
  optional: ['found', 'made'],
  guard: 0,
  editions: [
    cfr430('430.32(k) as amended by 88 FR 34624, integrated thermal efficiency; formula recalled', {
      most: 0.84,
      above: 491,
      below: 2536,
    }),
  ],
  check: (n, w, { most, above, below }) => {
    if (w.made < INTEGRATED_FROM) return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    const btu = (n.input * quantity.HOUR) / quantity.BTU;
    const required = (most * (btu + above)) / (btu + below);
    return { sense: 'at-least', required, found: n.found, kind: 'ratio', yardstick: required };
  },
});

/** Room for collectors to be joined later, where no fittings for them are built in. Divided by the length asked. */
export const solarPipe = defineRule({
  id: 'water.solar-pipe',
  line: 'water',
  scope: 'job',
  numbers: { found: 'job.solar-pipe' },
  words: { kind: 'job.kind' },
  optional: ['found', 'kind'],
  guard: 0,
  editions: [
    title24('110.4(b)1, 36 in of pipe between filter and heater', { limit: 36 * quantity.INCH }, READ),
  ],
  check: (n, w, { limit }) => {
    if (isRepair(w)) return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-least', required: limit, found: n.found, kind: 'length', yardstick: limit };
  },
});
