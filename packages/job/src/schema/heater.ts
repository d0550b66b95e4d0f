import { choose, curve, measure, point, text, yesNo } from './field.ts';
import { record } from './record.ts';

/** A heater, as its nameplate and instructions describe it. */
export const heater = record({
  collection: 'heaters',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    planned: yesNo('To be installed; one to be replaced says no.'),
    fuel: choose(['natural', 'propane'], 'On the nameplate.'),
    node: point('Junction of the gas piping it hangs on.'),
    input: measure('heat-rate', 'Rated input.', { min: 1000, max: 2e6 }),
    inputLeast: measure('heat-rate', 'Least input of a modulating or two-stage burner.', {
      min: 500,
      max: 2e6,
    }),
    efficiency: measure('ratio', 'Output over input, gross.', { min: 0.3, max: 1 }),
    inletLeast: measure('pressure', 'Least gas pressure at the valve inlet.', { min: 100, max: 50_000 }),
    inletGreatest: measure('pressure', 'Greatest gas pressure at the valve inlet.', {
      min: 100,
      max: 100_000,
    }),
    altitudeGreatest: measure('length', 'Altitude up to which it may run as it is.', { min: 0, max: 6000 }),
    altitudeInput: measure('heat-rate', 'Input the nameplate gives for this altitude, where it gives one.', {
      min: 1000,
      max: 2e6,
    }),
    shutOffDistance: measure('length', 'From its gas valve to the shut-off.', { min: 0, max: 100 }),
    sedimentTrap: yesNo('A sediment trap (drip leg) right before it.'),
    flowLeast: measure('volume-flow', 'Least water flow.', { min: 0, max: 0.1 }),
    flowGreatest: measure('volume-flow', 'Greatest water flow.', { min: 0, max: 0.2 }),
    loss: curve({ x: 'volume-flow', y: 'head', trend: 'rises' }, 'Head lost in it against flow.'),
    header: measure('diameter', 'Nominal bore of its water header.', { min: 0.01, max: 0.3 }),
    pressureGreatest: measure('pressure', 'Greatest working pressure of the water side.', {
      min: 10_000,
      max: 2e6,
    }),
    riseGreatest: measure('temperature-difference', 'Greatest temperature rise of the water.', {
      min: 0.5,
      max: 60,
    }),
    inletWaterLeast: measure('temperature', 'Coldest water it may see for long.', { min: 273.15, max: 350 }),
    innerBypass: measure('ratio', 'Water sent round again inside it, over the water that passes.', {
      min: 0,
      max: 20,
    }),
    heightAbovePool: measure('length', 'Its header above the pool surface; below zero when lower.', {
      min: -30,
      max: 60,
    }),
    switchKind: choose(['pressure', 'flow'], 'How it knows that water flows.'),
    switchLeast: measure('pressure', 'Lowest setting of its pressure switch.', { min: 0, max: 200_000 }),
    switchGreatest: measure('pressure', 'Highest setting.', { min: 0, max: 400_000 }),
    switchDifferential: measure('pressure-difference', 'Between closing and opening.', {
      min: 0,
      max: 50_000,
    }),
    switchSetting: measure('pressure', 'Where its pressure switch is set to close.', {
      min: 0,
      max: 400_000,
    }),
    volts: measure('voltage', 'Supply voltage on the nameplate.', { min: 12, max: 600 }),
    amperes: measure('current', 'Running current on the nameplate.', { min: 0, max: 200 }),
    runOnLeast: measure('time', 'How long its instructions want water after the burner; zero: not at all.', {
      min: 0,
      max: 36_000,
    }),
    headerMetal: yesNo('Its water headers are of metal.'),
    isolated: yesNo('Valves can shut it off from the rest of the loop.'),
    reliefAsked: yesNo('Its plate or instructions ask for a relief valve.'),
    reliefValve: yesNo('It has a relief valve of its own, with nothing between the two.'),
    reliefSet: measure('pressure', 'Set pressure on the tag of that valve.', { min: 0, max: 2e6 }),
    reliefCapacity: measure('heat-rate', 'Capacity on its tag …', { min: 0, max: 50e6 }),
    reliefSteam: measure('mass-flow', '… or the steam on it.', { min: 0, max: 25 }),
    reliefDischarge: yesNo('Its discharge pipe: full size, open, no thread at its end, to a safe place.'),
    reliefDischargeHeight: measure('length', 'End of that pipe above floor or ground.', { min: 0, max: 10 }),
    venting: choose(['outdoor', 'atmospheric', 'fan-assisted', 'condensing'], 'How its flue gas leaves.'),
  },
});
