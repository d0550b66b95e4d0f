import type { RuleWords } from '../dictionary.ts';
import { RULES_POWER_BONDING } from './rules-power-bonding.ts';
import { RULES_POWER_WIRING } from './rules-power-wiring.ts';

const ELECTRICIAN = 'Work for a licensed electrician; power off and locked before a cover comes off.';

export const RULES_POWER: Readonly<Record<string, RuleWords>> = {
  'power.selector': {
    title: 'Voltage selector stands at the supply',
    asks: 'The supply as measured lies within a tenth of the voltage the heater’s selector stands at.',
    mend: `Set the selector to the supply that was measured, not to the one on the panel’s label. ${ELECTRICIAN}`,
  },
  'power.control-voltage': {
    title: 'Control voltage',
    asks: 'With everything running, the control circuit has from 85 to 110 % of 24 V, or its relays chatter or burn.',
    mend: `Look at the selector and the supply first, then at the transformer and what loads it. ${ELECTRICIAN}`,
  },
  'power.voltage-idle': {
    title: 'Supply voltage, nothing running',
    asks: 'At the heater, with heater and pump off, the voltage lies within a tenth of its nameplate.',
    mend: `Ask what the building is fed with, 208 V or 240 V. ${ELECTRICIAN}`,
  },
  'power.voltage-running': {
    title: 'Supply voltage, heater and pump running',
    asks: 'At the heater, with heater and pump running, the voltage lies within a tenth of its nameplate.',
    mend: `Look for a long or thin run, a loose joint, or a weak supply. ${ELECTRICIAN}`,
  },
  'power.voltage-at-start': {
    title: 'Supply voltage as the pump starts',
    asks: 'While the pump starts, the voltage stays at 85 % of the heater’s nameplate or above, or its relays drop out.',
    mend: `Start pump and heater one after the other, give the pump a circuit of its own, or stiffen the supply. ${ELECTRICIAN}`,
  },
  'power.voltage-drop': {
    title: 'Voltage drop on the way to the heater',
    asks: 'Panel to heater, the circuit’s current loses no more than the code recommends; in Canada than it allows.',
    mend: `A larger conductor or a shorter way. ${ELECTRICIAN}`,
  },
  'power.supply-sag': {
    title: 'Voltage drop of feeder and circuit together',
    asks: 'From rest to running, the voltage at the heater falls by no more than the code recommends.',
    mend: `Measure at the panel too: what is lost there is the feeder’s or the utility’s. ${ELECTRICIAN}`,
  },
  'power.conductor-copper': {
    title: 'Copper conductors',
    asks: 'The wire to the heater is copper, as its terminals are made for.',
    mend: `Copper from the panel on, or a splice made for both metals. ${ELECTRICIAN}`,
  },
  'power.wire-carries-load': {
    title: 'Wire carries the circuit’s current',
    asks: 'Where it runs, the ampacity of the copper conductor is at least the current of all on its circuit.',
    mend: `A larger conductor. ${ELECTRICIAN}`,
  },
  'power.breaker-carries-load': {
    title: 'Breaker carries the circuit’s current for hours',
    asks: 'The breaker is rated for 125 % of the current of a load that runs for hours.',
    mend: `A larger breaker with a conductor to match, or a circuit of its own. ${ELECTRICIAN}`,
  },
  'power.breaker-protects-wire': {
    title: 'Breaker protects the wire',
    asks: 'The breaker is no larger than the conductor may have ahead of it.',
    mend: `A smaller breaker, or a larger conductor. ${ELECTRICIAN}`,
  },
  'power.equipment-ground': {
    title: 'Equipment ground large enough',
    asks: 'The copper equipment ground is as large as the breaker asks for, and grows with conductors made larger.',
    mend: `Pull a larger ground with the conductors. ${ELECTRICIAN}`,
  },
  ...RULES_POWER_WIRING,
  ...RULES_POWER_BONDING,
};
