/** The flame as the analyser sees it at start-up. */
import { defineRule } from '../../evaluate/index.ts';
import { byNameplate, byPhysics, byPractice } from '../known.ts';

/**
 * Share of 400 ppm. A met limit under three quarters of margin is tight: 100 ppm is where the trade begins to doubt a
 * burner.
 */
export const monoxide = defineRule({
  id: 'air.co-air-free',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.co-air-free' },
  words: {},
  guard: 0.75,
  stops: true,
  hazard: 'gas',
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'ANSI Z21 appliance tests',
        at: 'carbon monoxide, air-free; 100 ppm by NFPA 54 annex practice',
        known: 'from memory',
      },
      values: { share: 400e-6 },
    },
  ],
  check: (n, _w, { share }) => ({
    sense: 'at-most',
    required: share,
    found: n.found,
    kind: 'volume-fraction',
    yardstick: share,
  }),
});

/** By half the width. What is usual, never a limit: the plate governs. */
export const flueOxygen = defineRule({
  id: 'air.flue-oxygen',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.flue-oxygen' },
  words: { venting: 'heater.venting' },
  guard: 0,
  editions: byPractice({ fan: { low: 0.04, high: 0.09 }, hood: { low: 0.07, high: 0.12 } }),
  check: (n, w, values) => ({
    sense: 'within',
    ...(w.venting === 'atmospheric' ? values.hood : values.fan),
    found: n.found,
    kind: 'ratio',
  }),
});

/** In kelvins: 50 K over the dew point counts as the whole margin. A condensing heater is made to be under it. */
export const flueDry = defineRule({
  id: 'air.flue-dry',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.stack-temperature', required: 'heater.dew-point' },
  words: { venting: 'heater.venting' },
  editions: byPhysics({}),
  check: (n, w) =>
    w.venting === 'condensing'
      ? { sense: 'does-not-apply' }
      : { sense: 'at-least', required: n.required, found: n.found, kind: 'temperature', yardstick: 50 },
});

/** What leaves by the flue can be no more than what the plate’s efficiency leaves over. Divided by that. */
export const flueLoss = defineRule({
  id: 'air.flue-loss',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.flue-loss', efficiency: 'heater.efficiency' },
  words: {},
  guard: 0,
  editions: byNameplate({}),
  check: (n) =>
    n.efficiency >= 1
      ? { sense: 'does-not-apply' }
      : {
          sense: 'at-most',
          required: 1 - n.efficiency,
          found: n.found,
          kind: 'ratio',
          yardstick: 1 - n.efficiency,
        },
});
