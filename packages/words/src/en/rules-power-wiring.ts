import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN = 'Work for a licensed electrician; power off and locked before a cover comes off.';

/** Protection, disconnect, buried and low-voltage wiring, control. */
export const RULES_POWER_WIRING: Readonly<Record<string, RuleWords>> = {
  'power.ground-fault': {
    title: 'Ground-fault protection',
    asks: 'The circuit of a gas-fired pool heater above the low-voltage contact limit protects people against ground faults.',
    mend: `Fit the protection before the heater is used. ${ELECTRICIAN}`,
  },
  'power.ground-fault-near-water': {
    title: 'Ground-fault protection near the water',
    asks: 'Equipment within 3 m of the inside wall, and not shut off from it, is protected against ground faults.',
    mend: `Fit the protection before the heater is used. ${ELECTRICIAN}`,
  },
  'power.disconnect-in-sight': {
    title: 'Disconnect in sight',
    asks: 'A means to disconnect stands in sight of the heater, no more than 50 ft away.',
    mend: `A disconnect in sight, out of reach from the water. ${ELECTRICIAN}`,
  },
  'power.disconnect-from-water': {
    title: 'Disconnect out of reach from the water',
    asks: 'The disconnect stands 5 ft or more from the pool’s inside wall, or behind a permanent barrier.',
    mend: `Move it, or put a barrier between it and the water. ${ELECTRICIAN}`,
  },
  'power.fixed-wiring': {
    title: 'No extension cord',
    asks: 'The heater is not fed through an extension cord.',
    mend: `Unplug it and keep it off until it is wired to stay. ${ELECTRICIAN}`,
  },
  'power.burial-depth': {
    title: 'Wiring buried deep enough',
    asks: 'Over buried wiring lies the cover that its method and what is above it ask for.',
    mend: `Lay it deeper, or in metal conduit, or under concrete. ${ELECTRICIAN}`,
  },
  'power.raceway-near-pool': {
    title: 'Buried wiring near the pool in a raceway',
    asks: 'Under the pool or within 5 ft of it, wiring lies in a raceway and not bare in the ground.',
    mend: `Move it away from the pool, or lay a raceway. ${ELECTRICIAN}`,
  },
  'power.burial-near-pool': {
    title: 'Wiring near the pool buried deep enough',
    asks: 'Under the pool or within 5 ft of it, the raceway lies as deep as its material asks for.',
    mend: `Move it away from the pool, or lay it deeper. ${ELECTRICIAN}`,
  },
  'power.low-voltage-apart': {
    title: 'Low-voltage wiring apart from power',
    asks: 'Control wiring has a raceway of its own, a barrier, or a way of its own; it shares none with power.',
    mend: `Give it a raceway of its own. ${ELECTRICIAN}`,
  },
  'power.low-voltage-spacing': {
    title: 'Low-voltage cable away from power',
    asks: 'A control cable outside a raceway keeps 2 in from power conductors.',
    mend: 'Move the cable, or put it in a raceway.',
  },
  'power.interlocked': {
    title: 'Heater interlocked with the pump',
    asks: 'The heater has power, or a call for heat, only while its pump is on; its own water switch comes on top.',
    mend: `Feed it from the pump’s switched side, or through its controller. ${ELECTRICIAN}`,
  },
  'power.run-on': {
    title: 'Pump runs on after the burner',
    asks: 'The pump runs on as long as the heater’s instructions want, so that what heat is left goes into water.',
    mend: `Set the timer’s fireman’s switch, or the controller’s cool-down, to that time. ${ELECTRICIAN}`,
  },
  'power.local-limit': {
    title: 'Heater’s own thermostat is the limit',
    asks: 'Called from elsewhere, the heater still stops at the thermostat of its own.',
    mend: 'Set its own thermostat to the hottest water wanted, no hotter than people bear.',
  },
  'power.remote-from-water': {
    title: 'Remote control away from the water',
    asks: 'A wired remote control stands 10 ft or more from the pool’s inside wall.',
    mend: `Move it, or choose one that is listed for the waterside. ${ELECTRICIAN}`,
  },
};
