/** A heater fired alone and steady: its input by the meter, its output by the water. */
import { defineRule } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';

/** A twentieth either way; half the band is the yardstick. Over it the burner is overfired, under it starved. */
export const clockedInput = defineRule({
  id: 'gas.clocked-input',
  line: 'gas',
  scope: 'heater',
  numbers: { found: 'heater.clocked-input', nominal: 'heater.input-at-site' },
  words: {},
  guard: 0,
  editions: byPractice({ share: 0.05 }),
  check: (n, _w, { share }) => ({
    sense: 'within',
    low: n.nominal * (1 - share),
    high: n.nominal * (1 + share),
    found: n.found,
    kind: 'heat-rate',
  }),
});

/** A tenth either way: what thermometers and flow meters leave open. Half the band is the yardstick. */
export const heatFoundInWater = defineRule({
  id: 'heat.found-in-water',
  line: 'heat',
  scope: 'heater',
  numbers: {
    found: 'heater.water-heat',
    input: 'heater.clocked-input',
    efficiency: 'heater.efficiency',
  },
  words: {},
  guard: 0,
  editions: byPractice({ share: 0.1 }),
  check: (n, _w, { share }) => {
    const expected = n.input * n.efficiency;
    const low = expected * (1 - share);
    const high = expected * (1 + share);
    const because = n.found < low ? { reason: 'heat-missing' } : { reason: 'heat-too-much' };
    return {
      sense: 'within',
      low,
      high,
      found: n.found,
      kind: 'heat-rate',
      ...(n.found < low || n.found > high ? { because } : {}),
    };
  },
});
