/** Where the openings of the room stand, and their shape. Divided by the distance the code gives. */
import { defineRule } from '../../evaluate/index.ts';
import { FOOT, INCH, ifgc } from './codes.ts';

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
