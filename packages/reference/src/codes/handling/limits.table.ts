/** What moving the heater is held against. */
import { answer, atMost, type Proof, proofs, saying } from '../proof/index.ts';

const mass = saying('mass');

// Section 1.3: 51 lb is what an ideal lift may weigh; a limit of none allows none.
export const HANDLING_PROOFS: readonly Proof[] = proofs('place.lift', [
  atMost('heater.lift-share', mass('51 lb'), { also: { 'heater.lift-limit': mass('51 lb') } }),
  answer({ 'heater.lift-share': mass('51 lb'), 'heater.lift-limit': 0 }, 'fails'),
]);
