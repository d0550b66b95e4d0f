/**
 * When a heater is a boiler that an inspectorate sees, and what it needs then.
 *
 * Most states leave alone a heater of no more than 200,000 Btu/h, 160 psi, 210 °F and 120 US gal: from memory, and
 * each state has its own list. Input and pressure stand on the nameplate; the water of a pool or spa heater stays far
 * under 210 °F, and none of the kind holds 120 gal, so these two are not asked. The codes themselves reach below.
 */
import { quantity } from '@firstfire/engine';
import { type AnyRule, type Because, defineRule, type Edition } from '../../evaluate/index.ts';
import { boilerLaws } from '../entries.ts';

const KBTU_H = (1000 * quantity.BTU) / quantity.HOUR;

interface Limits {
  /** W. */
  readonly input: number;
  /** Pa, gauge. */
  readonly pressure: number;
}

const LIMITS: Limits = { input: 200 * KBTU_H, pressure: 160 * quantity.PSI };

const limits: readonly Edition<Limits>[] = [
  boilerLaws('exempt up to 200,000 Btu/h, 160 psi, 210 °F and 120 US gal; read the state’s own list', LIMITS),
];

interface Plate {
  readonly input: number;
  readonly pressure: number;
}

/** A figure that was written in the trade's units may pass its limit by rounding alone. */
const NEAR = 1 + 1e-9;

/** What makes it a boiler; undefined where nothing does, or where the pressure that might was not read. */
function boilerBy(plate: Plate, limit: Limits): Because | undefined {
  const reason = 'boiler-above';
  if (plate.input > limit.input * NEAR)
    return { reason, figures: { found: plate.input, limit: limit.input, kind: 'heat-rate' } };
  if (plate.pressure > limit.pressure * NEAR)
    return { reason, figures: { found: plate.pressure, limit: limit.pressure, kind: 'pressure' } };
  return undefined;
}

function noBoiler(plate: Plate, limit: Limits): Because {
  return { reason: 'boiler-below', figures: { found: plate.input, limit: limit.input, kind: 'heat-rate' } };
}

const PLATE = { input: 'heater.input', pressure: 'heater.water-pressure-greatest' } as const;

/** Says that it applies by asking for the paper, and that it does not with the limit the heater stays under. */
export const boilerInspection = defineRule({
  id: 'water.boiler-inspection',
  line: 'water',
  scope: 'heater',
  numbers: PLATE,
  words: { permit: 'job.permit-boiler' },
  optional: ['pressure', 'permit'],
  editions: limits,
  check: (n, w, limit) => {
    const because = boilerBy(n, limit);
    if (because === undefined)
      return Number.isNaN(n.pressure)
        ? { sense: 'unread' }
        : { sense: 'does-not-apply', because: noBoiler(n, limit) };
    if (w.permit === '') return { sense: 'unread' };
    if (w.permit === 'not needed')
      return { sense: 'does-not-apply', because: { reason: 'permit-not-needed' } };
    return { sense: 'holds', holds: w.permit !== 'not asked', because };
  },
});

/** A valve made for hot-water boilers bears the mark for them. Where the heater is a boiler and has a valve. */
export const reliefStamp = defineRule({
  id: 'water.relief-stamp',
  line: 'water',
  scope: 'heater',
  numbers: PLATE,
  words: { fitted: 'heater.relief-valve', stamp: 'heater.relief-stamp' },
  optional: ['pressure', 'stamp'],
  editions: [boilerLaws('ASME Boiler and Pressure Vessel Code, Section IV, HG-402, stamp HV', LIMITS)],
  check: (n, w, limit) => {
    if (w.fitted !== 'yes') return { sense: 'does-not-apply' };
    if (boilerBy(n, limit) === undefined)
      return Number.isNaN(n.pressure)
        ? { sense: 'unread' }
        : { sense: 'does-not-apply', because: noBoiler(n, limit) };
    return w.stamp === '' ? { sense: 'unread' } : { sense: 'holds', holds: w.stamp === 'HV' };
  },
});

/** A tube in the fire must see flow, where a boiler with a drum would watch its level. */
export const flowProving = defineRule({
  id: 'water.flow-proving',
  line: 'water',
  scope: 'heater',
  numbers: { input: 'heater.input' },
  words: { proves: 'heater.switch-kind' },
  optional: ['proves'],
  editions: [
    boilerLaws('ASME CSD-1, CW-210, from 400,000 Btu/h; Uniform Mechanical Code 2012, 1009.1', {
      input: 400 * KBTU_H,
    }),
  ],
  check: (n, w, { input }) => {
    const figures = { found: n.input, limit: input, kind: 'heat-rate' } as const;
    if (n.input * NEAR < input)
      return { sense: 'does-not-apply', because: { reason: 'boiler-below', figures } };
    return w.proves === '' ? { sense: 'unread' } : { sense: 'holds', holds: w.proves === 'flow' };
  },
});

export const BOILER_RULES: readonly AnyRule[] = [boilerInspection, reliefStamp, flowProving];
