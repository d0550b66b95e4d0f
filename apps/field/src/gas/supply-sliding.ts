/** The supply pressure as something that can be moved: the set pressure while gas flows, the lock-up while none does. */
import { quantity } from '@firstfire/engine';
import type { GasState, JobView } from '@firstfire/job';
import { unitOfBare } from '../entry/usual-units.ts';
import type { Sliding } from '../ui/slide.ts';

interface Steps {
  readonly step: number;
  readonly large: number;
}

/** By an arrow, by an arrow with Shift or a Page key, in the unit the reading has: as finely as a regulator is set. */
const STEPS: Readonly<Record<string, Steps>> = {
  'in w.c.': { step: 0.1, large: 0.5 },
  psi: { step: 0.05, large: 0.25 },
  kPa: { step: 0.02, large: 0.1 },
  mbar: { step: 0.2, large: 1 },
  Pa: { step: 20, large: 100 },
};

/** From 1 in w.c. to 10 psi. */
const LEAST = quantity.si(1, 'in w.c.', 'pressure');
const MOST = quantity.si(10, 'psi', 'pressure');

/** Undefined where it has not been read: there is nothing to move yet. */
export function supplySliding(view: JobView, state: GasState): Sliding | undefined {
  const field = state === 'all-off' ? 'lockUpPressure' : 'setPressure';
  const reading = view.record('gasSupply', '-').reading(field);
  const unit = unitOfBare(reading, 'pressure');
  if (typeof reading?.value !== 'number' || unit === undefined) return undefined;
  const { step, large } = STEPS[unit] ?? { step: reading.value / 100, large: reading.value / 20 };
  const si = (value: number): number =>
    quantity.si(value, unit, 'pressure') - quantity.si(0, unit, 'pressure');
  return {
    at: { collection: 'gasSupply', id: '-', field },
    value: quantity.si(reading.value, unit, 'pressure'),
    step: si(step),
    large: si(large),
    least: LEAST,
    most: MOST,
    made: (value) => ({
      value: Number(quantity.fromSi(value, unit, 'pressure').toPrecision(6)),
      unit,
      // As it is to be set: nobody has measured it.
      how: 'drawing',
    }),
  };
}
