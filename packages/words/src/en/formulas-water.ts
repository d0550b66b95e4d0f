/** Water in pipes, fittings, pump, valves and heater. */
export const FORMULAS_WATER: Readonly<Record<string, string>> = {
  // Pipe and fittings.
  'water.velocity': 'Velocity in the pipe',
  'water.flow-at-velocity': 'Flow at this velocity',
  'water.reynolds': 'Reynolds number of the water',
  'water.friction-factor': 'Friction factor of the pipe wall',
  'water.complete-turbulence': 'Friction factor at complete turbulence',
  'water.darcy-loss': 'Head lost in a pipe, Darcy–Weisbach',
  'water.darcy-flow': 'Flow at this head loss, Darcy–Weisbach',
  'water.hazen-williams-loss': 'Head lost in a pipe, Hazen–Williams',
  'water.hazen-williams-flow': 'Flow at this head loss, Hazen–Williams',
  'water.fitting-loss': 'Head lost in fittings',
  'water.loss-coefficient': 'Loss coefficient K of a fitting',
  'water.equivalent-length': 'Equivalent length of a fitting',
  'water.k-of-length': 'Loss coefficient K of an equivalent length',
  'water.expansion-k': 'Loss coefficient K of a widening',
  'water.contraction-k': 'Loss coefficient K of a narrowing',
  'water.device-loss': 'Head lost in a filter, heater or other part',
  'water.loss-curve': 'Head lost, read off its curve',

  // Valves.
  'water.valve-drop': 'Pressure drop of a valve',
  'water.valve-flow': 'Flow through a valve',
  'water.coefficient-for-duty': 'Flow coefficient a valve needs',
  'water.k-of-coefficient': 'Loss coefficient K of a flow coefficient',
  'water.coefficient-of-k': 'Flow coefficient of a loss coefficient K',
  'water.valve-coefficient': 'Flow coefficient at this opening',

  // Pump.
  'water.affinity-flow': 'Flow at another speed',
  'water.affinity-head': 'Head at another speed',
  'water.affinity-power': 'Power at another speed',
  'water.pump-head-at-speed': 'Head of the pump at this speed and flow',
  'water.pump-curve': 'Head of the pump, read off its curve',
  'water.total-head': 'Head the pump makes, from its gauges',
  'water.hydraulic-power': 'Power given to the water',
  'water.drive-power': 'Power the pump takes',
  'water.npsh-available': 'Suction head above boiling, NPSH available',

  // Heater.
  'water.temperature-rise': 'Temperature rise through the heater',
  'water.heat-carried': 'Heat the water carries off',
  'water.flow-for-rise': 'Flow for this temperature rise',
  'water.exchanger-inlet': 'Temperature of the water that enters the exchanger',
  'water.recirculation-for-inlet': 'Share of outlet water to mix back for this inlet temperature',

  // Pool, heights and pressures.
  'water.static-pressure': 'Pressure of a column of water',
  'water.static-height': 'Height of the column for this pressure',
  'water.turnover': 'Turnover time',
  'water.flow-for-turnover': 'Flow for this turnover time',
  'water.spill-head': 'Head of water over the spillway',
  'water.surge-head': 'Surge when the flow stops at once',
  'water.critical-closure': 'Time in which a valve may close before the full surge',
  'water.wave-speed': 'Speed of the pressure wave',
  'water.point-pressure': 'Pressure a gauge or switch feels here',

  // States of the loop.
  'water.speed-ratio': 'Speed over the speed of the curve',
  'water.filter-loading': 'Loss of the filter, of that of a clean one',
  'water.gauge-over-drawing': 'What the clean gauge shows, of what the loop as drawn should show',
  'water.shut-off-head': 'Head of the pump against a shut valve',
  'water.coldest-start': 'Coldest water at the start',
  'water.bypass-clean': 'Bypass with a clean filter, at {speed}, {basin}',
  'water.bypass-dirty': 'Bypass with a dirty filter, at {speed}, {basin}',
  'water.bypass-low': 'Least opening that holds the flow',
  'water.bypass-high': 'Greatest opening that holds the flow',
  'water.bypass-too-much': 'Too much water with the bypass this far open',
  'water.bypass-too-little': 'Too little water with the bypass this far open',

  // The whole pad.
  'water.pad': 'Flow through the pad',
  'water.pad-pump': 'Head between both ends of the pump',
  'water.pad-filter': 'Head lost in the filter',
  'water.pad-heater': 'Head lost in {part}',
  'water.pad-bypass-valve': 'Head lost in the bypass valve',
  'water.pad-port': 'Head lost in {part}',
  'water.pad-item': 'Head lost in {part}',
  'water.switch-lowest': 'Lowest pressure the switch may make at, so that it opens at rest',
  'water.switch-highest': 'Highest pressure the switch may make at, so that it stays made',
  'water.pad-switch': 'Pressure at the water switch of {heater}',
};
