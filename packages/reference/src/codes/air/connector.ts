/** The way from the heater to its vent, and the vent or chimney it joins. */
import { defineRule } from '../../evaluate/index.ts';
import { byPhysics, byPractice } from '../known.ts';
import { FOOT, INCH, ifgc, ifgcRecalled } from './codes.ts';

/** A quarter inch a foot: up to the vent for dry gas, back to the heater for condensate. Divided by it. */
const SLOPE = { rise: (0.25 * INCH) / FOOT };

export const ventSlope = defineRule({
  id: 'air.vent-slope',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.vent-slope' },
  words: {},
  guard: 0,
  editions: [ifgc('503.10.7, read as NFPA 54-2012 12.11.7', SLOPE), ...byPractice(SLOPE)],
  check: (n, _w, { rise }) => ({
    sense: 'at-least',
    required: rise,
    found: n.found,
    kind: 'ratio',
    yardstick: rise,
  }),
});

/** Asked where no table of the code sizes the vent, which has its own lengths. Divided by the share. */
export const connectorLength = defineRule({
  id: 'air.connector-length',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.connector-share' },
  words: { kind: 'heater.vent-kind', reach: 'heater.vent-reach' },
  editions: [ifgc('503.10.8', { single: 0.75, double: 1 })],
  check: (n, w, { single, double }) => {
    if (w.reach === 'table') return { sense: 'does-not-apply' };
    const required = w.kind === 'type B' ? double : single;
    return { sense: 'at-most', required, found: n.found, kind: 'ratio', yardstick: required };
  },
});

/** Cold, a single wall takes its draught from the gas and drips. */
export const singleWallWarm = defineRule({
  id: 'air.single-wall-warm',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { cold: 'heater.single-wall-cold' },
  editions: [ifgcRecalled('503.10.2', {}), ...byPractice({})],
  check: (_n, w) => ({ sense: 'holds', holds: w.cold === 'no' }),
});

/** Divided by the greatest ratio; wider, the gas cools before it is out. */
export const ventNotWide = defineRule({
  id: 'air.vent-not-wide',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.vent-ratio' },
  words: {},
  editions: [ifgc('504.2.8, read as NFPA 54-2012 13.1.9', { greatest: 7 })],
  check: (n, _w, { greatest }) => ({
    sense: 'at-most',
    required: greatest,
    found: n.found,
    kind: 'ratio',
    yardstick: greatest,
  }),
});

/** Of one heater with a draught hood on a chimney of its own. */
export const chimneyArea = defineRule({
  id: 'air.chimney-area',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.chimney-ratio' },
  words: {},
  editions: [ifgc('503.6.9.1, read as NFPA 54-2012 12.7.3.1(3)', { least: 1, greatest: 7 })],
  check: (n, _w, { least, greatest }) => ({
    sense: 'within',
    low: least,
    high: greatest,
    found: n.found,
    kind: 'ratio',
  }),
});

/** Where the room pulls harder than the whole vent draws, the flue gas comes back. Divided by the pull. */
export const draughtLeft = defineRule({
  id: 'air.draught-left',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.vent-draught', required: 'heater.room-pull' },
  words: {},
  editions: byPhysics({}),
  check: (n) =>
    n.required === 0
      ? { sense: 'does-not-apply' }
      : {
          sense: 'at-least',
          required: n.required,
          found: n.found,
          kind: 'pressure-difference',
          yardstick: n.required,
        },
});
