/** Where the openings of the room stand, and their shape. Divided by the distance the code gives. */
import { defineRule } from '../../evaluate/index.ts';
import { b149, FOOT, INCH, ifgc, ifgcRecalled } from './codes.ts';

const NEAR = { metres: 1 * FOOT };

export const openingLow = defineRule({
  id: 'air.opening-low',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.opening-low-floor' },
  words: {},
  guard: 0,
  editions: [ifgc('304.5.3.1 and 304.6.1, read as NFPA 54-2012 9.3.3.1', NEAR)],
  check: (n, _w, { metres }) => ({
    sense: 'at-most',
    required: metres,
    found: n.found,
    kind: 'length',
    yardstick: metres,
  }),
});

export const openingHigh = defineRule({
  id: 'air.opening-high',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.opening-high-ceiling' },
  words: {},
  guard: 0,
  editions: [ifgc('304.5.3.1, 304.6.1 and 304.6.2, read as NFPA 54-2012 9.3.3', NEAR)],
  check: (n, _w, { metres }) => ({
    sense: 'at-most',
    required: metres,
    found: n.found,
    kind: 'length',
    yardstick: metres,
  }),
});

export const openingSide = defineRule({
  id: 'air.opening-side',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.opening-least-side' },
  words: {},
  editions: [ifgc('304.5.3.1 and 304.6, read as NFPA 54-2012 9.3.3', { metres: 3 * INCH })],
  check: (n, _w, { metres }) => ({
    sense: 'at-least',
    required: metres,
    found: n.found,
    kind: 'length',
    yardstick: metres,
  }),
});

/** A screen finer than this fills with dust and cobwebs. Divided by the mesh; no screen asks nothing. */
export const screenMesh = defineRule({
  id: 'air.screen-mesh',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.screen-mesh' },
  words: {},
  guard: 0,
  editions: [ifgc('304.10, read as NFPA 54-2012 9.3.7', { metres: 0.25 * INCH })],
  check: (n, _w, { metres }) =>
    n.found === 0
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required: metres, found: n.found, kind: 'length', yardstick: metres },
});

/** Of the method of one opening: room beside the heater over what is asked, so that it is its own yardstick. */
export const oneOpeningRoom = defineRule({
  id: 'air.one-opening-room',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.one-opening-room' },
  words: {},
  editions: [ifgc('304.6.2, read as NFPA 54-2012 9.3.3', {})],
  check: (n) => ({ sense: 'at-least', required: 1, found: n.found, kind: 'ratio', yardstick: 1 }),
});

/** Over 400,000 Btu/h, as the opening high up is. By half the width of the band. */
export const openingLowBand = defineRule({
  id: 'air.opening-low-band',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.opening-low-floor', large: 'heater.high-opening-share' },
  words: {},
  guard: 0,
  editions: [
    b149('8.4.2, as quoted in a gas technician’s training text', { low: 6 * INCH, high: 18 * INCH }),
  ],
  check: (n, _w, { low, high }) => ({ sense: 'within', low, high, found: n.found, kind: 'length' }),
});

/** Divided by the height asked. */
export const intakeHigh = defineRule({
  id: 'air.intake-high',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.intake-height' },
  words: {},
  editions: [ifgcRecalled('304.11', { metres: 1 * FOOT })],
  check: (n, _w, { metres }) => ({
    sense: 'at-least',
    required: metres,
    found: n.found,
    kind: 'length',
    yardstick: metres,
  }),
});

export const ductAlone = defineRule({
  id: 'air.duct-alone',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { alone: 'heater.duct-alone' },
  editions: [ifgcRecalled('304.11', {})],
  check: (_n, w) => ({ sense: 'holds', holds: w.alone === 'yes' }),
});

export const ductRises = defineRule({
  id: 'air.duct-rises',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { rises: 'heater.duct-rises' },
  editions: [ifgcRecalled('304.11', {})],
  check: (_n, w) => ({ sense: 'holds', holds: w.rises === 'yes' }),
});
