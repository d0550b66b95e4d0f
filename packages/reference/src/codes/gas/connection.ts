/** How the heater is connected: right gas, shut-off within reach, sediment trap, altitude. */
import { defineRule } from '../../evaluate/index.ts';
import { b149, NO_SECTION } from '../entries.ts';
import { byNameplate } from '../known.ts';

/** The wrong gas stops everything. */
export const fuelMatches = defineRule({
  id: 'gas.fuel-matches',
  line: 'gas',
  scope: 'heater',
  numbers: {},
  words: { heater: 'heater.fuel', supply: 'job.fuel' },
  stops: true,
  hazard: 'gas',
  editions: byNameplate({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.heater === w.supply }),
});

/** Divided by the greatest distance allowed. */
export const shutOffDistance = defineRule({
  id: 'gas.shut-off-distance',
  line: 'gas',
  scope: 'heater',
  numbers: { found: 'heater.shut-off-distance' },
  words: {},
  editions: [
    {
      edition: 'IFGC 2018',
      from: '2017-08-31',
      source: { document: 'International Fuel Gas Code 2018', at: 'Section 409.5.1', known: 'from memory' },
      values: { metres: 1.8288 },
    },
  ],
  check: (n, _w, values) => ({
    sense: 'at-most',
    required: values.metres,
    found: n.found,
    kind: 'length',
    yardstick: values.metres,
  }),
});

export const sedimentTrap = defineRule({
  id: 'gas.sediment-trap',
  line: 'gas',
  scope: 'heater',
  numbers: {},
  words: { fitted: 'heater.sediment-trap' },
  editions: [
    {
      edition: 'IFGC 2018',
      from: '2017-08-31',
      source: { document: 'International Fuel Gas Code 2018', at: 'Section 408.4', known: 'from memory' },
      values: {},
    },
    b149(`dirt pocket before each appliance with automatic controls, ${NO_SECTION}`, {}),
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.fitted === 'yes' }),
});

/** A heater burns right only up to the altitude its nameplate, or the parts fitted for it, allow. In metres. */
export const altitudeRating = defineRule({
  id: 'gas.altitude-rating',
  line: 'gas',
  scope: 'heater',
  numbers: { found: 'site.altitude', required: 'heater.altitude-maximum' },
  words: {},
  guard: 0,
  editions: byNameplate({}),
  check: (n) => ({
    sense: 'at-most',
    required: n.required,
    found: n.found,
    kind: 'length',
    // Site and limit may both be zero metres: 1,000 ft, the step in which ratings are given, is the yardstick.
    yardstick: 304.8,
  }),
});
