import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN = 'Work for a licensed electrician; power off and locked before a cover comes off.';

export const RULES_POWER: Readonly<Record<string, RuleWords>> = {
  'power.selector': {
    title: 'Voltage selector stands at the supply',
    asks: 'The supply as measured lies within a tenth of the voltage the heater’s selector stands at.',
    mend: `Left at 240 V on a 120 V supply the control voltage is halved and the fan never proves air; the other way round it burns out. ${ELECTRICIAN}`,
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
  'power.wire-carries-load': {
    title: 'Wire carries the heater’s current',
    asks: 'The ampacity of the copper conductor where it runs is at least the nameplate’s current.',
    mend: `A larger conductor. ${ELECTRICIAN}`,
  },
  'power.breaker-protects-wire': {
    title: 'Breaker protects the wire',
    asks: 'The breaker is no larger than the conductor may have ahead of it.',
    mend: `A smaller breaker, or a larger conductor. ${ELECTRICIAN}`,
  },
  'power.voltage-drop': {
    title: 'Voltage drop on the way to the heater',
    asks: 'Panel to heater, the nameplate’s current loses no more than the code recommends.',
    mend: `A larger conductor or a shorter way. ${ELECTRICIAN}`,
  },
  'power.ground-fault': {
    title: 'Ground-fault protection',
    asks: 'The circuit of a gas-fired pool heater is protected for people against ground faults.',
    mend: `Fit the protection before the heater is used. ${ELECTRICIAN}`,
  },
  'power.disconnect-in-sight': {
    title: 'Disconnect in sight',
    asks: 'A means to disconnect stands in sight of the heater.',
    mend: `A disconnect in sight, out of reach from the water. ${ELECTRICIAN}`,
  },
  'power.bonded': {
    title: 'Heater bonded to the pool’s grid',
    asks: 'The heater’s lug is bonded to the equipotential grid with copper of the size the code asks for.',
    mend: `Keep people out of the water if anyone feels a tingle; then bond it. ${ELECTRICIAN}`,
  },
};
