/** Velocity of the water in each run at its greatest flow: less before the pump than behind it. */
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';

/** m/s. */
interface Velocities {
  readonly suction: number;
  readonly pressure: number;
}

/** 6 ft/s before the pump, 8 ft/s behind it. */
const SIX_AND_EIGHT: Velocities = { suction: 1.8288, pressure: 2.4384 };

const editions: readonly Edition<Velocities>[] = [
  ...byPractice(SIX_AND_EIGHT),
  {
    edition: 'ISPSC 2021',
    from: '2020-12-01',
    source: {
      document: 'International Swimming Pool and Spa Code 2021',
      at: 'Section 311.3',
      known: 'from memory',
    },
    values: SIX_AND_EIGHT,
  },
];

/** Divided by the limit. */
export const pipeVelocity = defineRule({
  id: 'water.pipe-velocity',
  line: 'water',
  scope: 'run',
  numbers: { found: 'run.velocity-greatest' },
  words: { role: 'run.role' },
  editions,
  check: (n, w, values) => {
    const required = w.role === 'suction' ? values.suction : values.pressure;
    return { sense: 'at-most', required, found: n.found, kind: 'velocity', yardstick: required };
  },
});
