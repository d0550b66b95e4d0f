import type { RuleWords } from '../dictionary.ts';

export const RULES_GAS: Readonly<Record<string, RuleWords>> = {
  'gas.fuel-matches': {
    title: 'Heater and supply are the same gas',
    asks: 'The gas on the heater’s nameplate is the gas in the pipe.',
    mend: 'Do not light it. Have the gas supplier or the maker’s agent confirm the gas before anything else is done.',
  },
  'gas.burner-pressure-running': {
    title: 'Gas pressure at the heater, everything running',
    asks: 'With every appliance on, the gauge at the heater’s valve shows at least the nameplate’s minimum.',
    mend: 'Look for the section that costs most pressure, and for a supply that can be raised by those licensed to do so.',
  },
  'gas.burner-pressure-lock-up': {
    title: 'Gas pressure at the heater, all off',
    asks: 'With no gas flowing, the pressure the regulator locks up at is no more than the heater’s valve bears.',
    mend: 'Shut the gas off and keep the heater off until a licensed gas fitter has put the pressure right.',
  },
  'gas.code-pressure': {
    title: 'Pressure the code’s equation leaves at the heater',
    asks: 'Connected load, code equation, fittings as equivalent length: at least the nameplate’s minimum is left.',
    mend: 'A larger size on the path to the heater, or a higher supply pressure with a line regulator.',
  },
  'gas.section-capacity': {
    title: 'Section carries its load by the code’s sizing equation',
    asks: 'At the design drop and the longest length, fittings counted, the code’s equation (for corrugated tubing its table) lets the section carry everything connected beyond it. A printed table, read at its next longer row, may say less.',
    mend: 'The next size up for this section, or a system of higher pressure.',
  },
  'gas.meter-capacity': {
    title: 'Meter carries the connected load',
    asks: 'The capacity on the meter’s badge, as printed, is at least everything connected. High above the sea a meter passes less: the pressure at the heater counts that, this does not.',
    mend: 'Ask the gas supplier for a larger meter; the job’s connected load goes with the request.',
  },
  'gas.regulator-capacity': {
    title: 'Line regulator carries its load',
    asks: 'At its inlet pressure here, the regulator passes everything connected beyond it.',
    mend: 'A larger regulator, or one of its own for the heater.',
  },
  'gas.tank-vaporisation': {
    title: 'Propane tank makes enough vapour in winter',
    asks: 'At its least fill and the coldest air, the tank vaporises at least the connected input.',
    mend: 'A larger tank, a second one beside it, or a higher least fill agreed with the supplier.',
  },
  'gas.altitude-rating': {
    title: 'Heater may run at this altitude',
    asks: 'The site stands no higher than the heater, with the parts fitted, may run.',
    mend: 'Ask the maker for the parts for this altitude; above about 10,000 ft usually nothing is offered.',
  },
  'gas.shut-off-distance': {
    title: 'Shut-off valve within reach of the heater',
    asks: 'The appliance shut-off stands no farther from the heater than the code allows.',
    mend: 'A shut-off valve and union close to the heater.',
  },
  'gas.sediment-trap': {
    title: 'Sediment trap before the heater',
    asks: 'A sediment trap catches dirt and water right before the heater’s valve.',
    mend: 'Fit a tee with a nipple and cap below the drop, as close to the heater as it goes.',
  },
  'gas.test-pressure': {
    title: 'Pressure test high enough',
    asks: 'The test is made at the pressure the code asks for above the greatest working pressure.',
    mend: 'Test again at the pressure shown, with the appliances and regulators isolated first.',
  },
  'gas.test-duration': {
    title: 'Pressure test long enough',
    asks: 'The pressure holds for at least the time the code asks for.',
    mend: 'Hold the test for the time shown.',
  },
  'gas.test-gauge-range': {
    title: 'Test gauge fine enough',
    asks: 'The gauge’s full scale is no more than the multiple of the test pressure that the code allows.',
    mend: 'Use a gauge of smaller range, so that a small leak can be seen.',
  },
};
