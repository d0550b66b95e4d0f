/** Valve, union and trap right before the heater. */
import { quantity } from '@firstfire/engine';
import { defineRule } from '../../evaluate/index.ts';
import { b149, ifgc2018, NO_SECTION } from '../entries.ts';
import { saysYes } from '../plain.ts';

export const shutOffAccessible = saysYes({
  id: 'gas.shut-off-accessible',
  line: 'gas',
  scope: 'heater',
  fact: 'heater.shut-off-accessible',
  editions: [ifgc2018('409.5, provided with access', {}), b149('6.18, readily accessible', {})],
});

/** Between the valve and the heater, so that the heater comes away with the gas shut. */
export const union = saysYes({
  id: 'gas.union',
  line: 'gas',
  scope: 'heater',
  fact: 'heater.gas-union',
  editions: [
    ifgc2018('409.5.1, valve upstream of the union or connector it serves', {}),
    b149(`union or flange behind the appliance’s valve, ${NO_SECTION}`, {}),
  ],
});

/** Where a trap is fitted. Divided by the length asked. */
export const trapNipple = defineRule({
  id: 'gas.sediment-trap-nipple',
  line: 'gas',
  scope: 'heater',
  numbers: { found: 'heater.trap-nipple' },
  words: { trap: 'heater.sediment-trap' },
  optional: ['found'],
  guard: 0,
  editions: [
    ifgc2018('408.4 and its figure, nipple of 3 in', { limit: 3 * quantity.INCH }),
    b149(`dirt pocket, capped nipple of 3 in (75 mm), ${NO_SECTION}`, { limit: 0.075 }),
  ],
  check: (n, w, { limit }) => {
    if (w.trap !== 'yes') return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-least', required: limit, found: n.found, kind: 'length', yardstick: limit };
  },
});
