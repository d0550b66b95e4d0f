/** What moving the heater is held against. */
import { answer, atLeast, atMost, type Proof, proofs, saying, words } from '../proof/index.ts';

const mass = saying('mass');
const length = saying('length');

const LIFT = proofs('place.lift', [
  // Section 1.3: 51 lb is what an ideal lift may weigh; a limit of none allows none.
  atMost('heater.lift-share', mass('51 lb'), { also: { 'heater.lift-limit': mass('51 lb') } }),
  answer({ 'heater.lift-share': mass('51 lb'), 'heater.lift-limit': 0 }, 'fails'),
]);

const WAY: readonly (readonly Proof[])[] = [
  // Common practice, no source: an inch for a hand on either side.
  proofs(
    'place.way-wide',
    [atLeast('heater.way-width', length('32 in'), { also: { 'heater.narrow-side': length('30 in') } })],
    { guard: 0 },
  ),
  proofs('place.way-firm', words('heater.way-ground', { meets: ['firm'], fails: ['soft', 'steps'] })),
  proofs('place.equipment-bears', [
    atLeast('heater.equipment-load', mass('300 lb'), { also: { 'heater.mass': mass('300 lb') } }),
  ]),
];

export const HANDLING_PROOFS: readonly Proof[] = [...LIFT, ...WAY.flat()];
