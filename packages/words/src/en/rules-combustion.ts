import type { RuleWords } from '../dictionary.ts';

export const RULES_COMBUSTION: Readonly<Record<string, RuleWords>> = {
  'air.co-air-free': {
    title: 'Carbon monoxide in the flue gas',
    asks: 'Steady and again after ten minutes, carbon monoxide without the air that thins it stays under what an appliance may give off.',
    mend: 'Over the limit or rising: shut it off, air the place, let nobody run it. Then gas kind, manifold pressure, burner, blower and exchanger, by a licensed fitter.',
  },
  'air.flue-oxygen': {
    title: 'Oxygen in the flue gas',
    asks: 'Sampled before any air thins it, oxygen lies where it usually does for this way of venting; the plate governs.',
    mend: 'Low: too little air or too much gas. High: too much air, a leak before the probe, or a burner that starves. Set it by the maker’s instructions only.',
  },
  'air.flue-dry': {
    title: 'Flue gas leaves dry',
    asks: 'At the outlet the flue gas is warmer than its dew point, so that nothing drips in a heater not made for it.',
    mend: 'Warmer water into the exchanger, full input, less excess air. Wet flue gas is sour: it eats copper and vent.',
  },
  'air.flue-loss': {
    title: 'Flue takes no more heat than the nameplate leaves over',
    asks: 'What leaves with the flue gas is no more than what the efficiency on the plate leaves over.',
    mend: 'Soot or scale on the exchanger, too much air, or an input above the plate. Clean only by the maker’s instructions.',
  },
  'gas.clocked-input': {
    title: 'Input by the meter',
    asks: 'Timed at the meter with nothing else burning, the heater burns what its plate says for this altitude, within a twentieth.',
    mend: 'Over: manifold pressure, orifices and kind of gas, by a qualified technician, heater off meanwhile. Under: supply pressure, orifices, air.',
  },
  'heat.found-in-water': {
    title: 'Heat of the flame found in the water',
    asks: 'What the water carries off is what the meter counted times the efficiency of the plate, within a tenth.',
    mend: 'Check flow meter and thermometers first; then the flue loss; then soot and scale, cleaned only as the maker says.',
  },
};
