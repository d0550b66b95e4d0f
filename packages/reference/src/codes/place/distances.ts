/** Distances from the heater to other things of the yard; each divided by what is asked. */
import { defineRule } from '../../evaluate/index.ts';
import { b149 } from '../entries.ts';
import { byPractice } from '../known.ts';
import { atLeast } from './faces.ts';
import { USUAL_DISTANCE } from './usual.ts';

export const propertyLine = defineRule({
  id: 'place.property-line',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.property-line-distance' },
  words: {},
  editions: [
    {
      edition: 'B149.1-20',
      from: '2020-01-01',
      source: {
        document: 'CSA B149.1',
        at: '7.25, outdoor pool heater, as quoted in a trade article',
        known: 'read in a public copy',
      },
      values: { metres: 0.45 },
    },
  ],
  check: (n, _w, values) => atLeast(values.metres, n.found),
});

/** What the zoning at the address asks, as somebody asked there. */
export const setback = defineRule({
  id: 'place.setback',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.property-line-distance', required: 'heater.setback' },
  words: {},
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'zoning at the address',
        at: 'the setback read there for this job',
        known: 'common practice, no source',
      },
      values: {},
    },
  ],
  check: (n) => atLeast(n.required, n.found),
});

export const airConditioner = defineRule({
  id: 'place.air-conditioner',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.air-conditioner-distance' },
  words: {},
  editions: byPractice({ metres: USUAL_DISTANCE['air-conditioner'] }),
  check: (n, _w, values) => atLeast(values.metres, n.found),
});

/** From where a service regulator breathes out gas to the nearest flame. */
export const regulatorVent = defineRule({
  id: 'place.regulator-vent',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.regulator-vent-distance' },
  words: { fuel: 'heater.fuel' },
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'NFPA 58 for propane, gas utilities’ service rules for natural gas',
        at: 'vent of a regulator from a source of ignition: 5 ft and 3 ft',
        known: 'from memory',
      },
      values: { natural: 0.9144, propane: 1.524 },
    },
    b149(
      '8.14.8, 3 ft from the vent of any regulator, as quoted in a trade article',
      { natural: 0.9144, propane: 0.9144 },
      'read in a public copy',
    ),
  ],
  check: (n, w, values) => atLeast(w.fuel === 'propane' ? values.propane : values.natural, n.found),
});

export const electricalSpace = defineRule({
  id: 'place.electrical-space',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.electrical-distance' },
  words: {},
  editions: [
    {
      edition: 'NEC 2011',
      from: '2010-08-25',
      source: {
        document: 'National Electrical Code 2011',
        at: '110.26(A)(1), working space of 3 ft before the equipment',
        known: 'from memory',
      },
      values: { metres: 0.9144 },
    },
  ],
  check: (n, _w, values) => atLeast(values.metres, n.found),
});

export const waterEdge = defineRule({
  id: 'place.water-edge',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.water-edge-distance' },
  words: {},
  editions: byPractice({ metres: USUAL_DISTANCE.water }),
  check: (n, _w, values) => atLeast(values.metres, n.found),
});

export const tankDistance = defineRule({
  id: 'place.propane-tank',
  line: 'place',
  scope: 'heater',
  numbers: { found: 'heater.tank-distance' },
  words: {},
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: {
        document: 'NFPA 58',
        at: 'Table 6.3.4.3, relief valve of a container from a source of ignition',
        known: 'from memory',
      },
      values: { metres: 3.048 },
    },
  ],
  check: (n, _w, values) => atLeast(values.metres, n.found),
});
