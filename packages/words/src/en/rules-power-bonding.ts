import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN = 'Work for a licensed electrician.';

/** What holds everything around the water at one potential. */
export const RULES_POWER_BONDING: Readonly<Record<string, RuleWords>> = {
  'power.no-tingle': {
    title: 'Nobody feels a tingle',
    asks: 'Nobody has felt a tingle in the water, on the deck, or at anything of metal there.',
    mend: 'Everyone out of the water and off the wet deck, touching no metal; then power off at the panel, and call a licensed electrician and the utility. Nobody goes in before the cause is found.',
  },
  'power.bonded': {
    title: 'Heater bonded to the pool’s grid',
    asks: 'The heater’s lug is bonded to what bonds the pool.',
    mend: `Bond it before anyone is in the water. ${ELECTRICIAN}`,
  },
  'power.bond-size': {
    title: 'Bonding conductor large enough',
    asks: 'The copper bonding conductor has the size the code asks for; bare, covered or insulated.',
    mend: `Run a larger one. ${ELECTRICIAN}`,
  },
  'power.bond-solid': {
    title: 'Bonding conductor solid',
    asks: 'The bonding conductor is solid copper.',
    mend: `Run a solid one. ${ELECTRICIAN}`,
  },
  'power.water-bond': {
    title: 'Pool water bonded',
    asks: 'Once the work is done, 9 in² or more of bonded metal still touches the water.',
    mend: `Fit a water bond in the piping. ${ELECTRICIAN}`,
  },
  'power.perimeter-bonded': {
    title: 'Ground around the pool bonded',
    asks: 'Where ground around the pool is opened or laid, it is bonded by shell steel, grid or ring.',
    mend: `Bond it before it is closed. ${ELECTRICIAN}`,
  },
  'power.perimeter-points': {
    title: 'Ground bonded at enough points',
    asks: 'Steel, grid or ring is connected at as many points, evenly spread, as the code asks for.',
    mend: `Add the points that are missing before the ground is closed. ${ELECTRICIAN}`,
  },
  'power.perimeter-width': {
    title: 'Bonded ground wide enough',
    asks: 'The bonded ground reaches as far out from the inside wall as the code asks for.',
    mend: `Widen it before the ground is closed. ${ELECTRICIAN}`,
  },
  'power.ring-distance': {
    title: 'Copper ring at its distance from the wall',
    asks: 'A copper ring in place of a grid lies in the code’s band from the inside wall.',
    mend: `Move it before the ground is closed. ${ELECTRICIAN}`,
  },
  'power.ring-depth': {
    title: 'Copper ring at its depth',
    asks: 'A copper ring lies in the code’s band below the subgrade.',
    mend: `Set it right before the ground is closed. ${ELECTRICIAN}`,
  },
  'power.grid-pitch': {
    title: 'Pitch of the copper grid',
    asks: 'The wires of a copper grid lie a foot apart, within the code’s tolerance.',
    mend: `Space it right before the ground is closed. ${ELECTRICIAN}`,
  },
};
