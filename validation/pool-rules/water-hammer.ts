/** Water hammer: a worked case of the military design manual, and a trade page's figures for rigid pipe. */
import { quantity, water } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { FOOT, PSI } = quantity;

/** The manual rounds g to 32 ft/s2. */
const MANUAL_GRAVITY = 32 / 32.174;
const WAVE = 2690 * FOOT;
const STATIC = 20;

const surgeFeet = (): number =>
  water.surgeHead.kernel({ waveSpeed: WAVE, velocityChange: 6.48 * FOOT }) / FOOT / MANUAL_GRAVITY;
const psiOf = (feet: number): number =>
  water.staticPressure.kernel({ height: feet * FOOT, density: 999.016 }) / PSI;

const MANUAL: readonly Case[] = [
  { id: 'surge, ft', published: 544.7, computed: surgeFeet },
  { id: 'surge, psi', published: 236.1, computed: () => psiOf(surgeFeet()) },
  { id: 'with static head, ft', published: 565, computed: () => surgeFeet() + STATIC },
  { id: 'with static head, psi', published: 245, computed: () => psiOf(surgeFeet() + STATIC) },
  {
    id: 'critical time, s',
    published: 2.53,
    computed: () => water.criticalClosure.kernel({ length: 3400 * FOOT, waveSpeed: WAVE }),
  },
];

/** A wall that does not give: the wave runs as sound in water. */
function rigidSurge(feetPerSecond: number): number {
  const rigid = { insideDiameter: 0.05, wall: 0.005, modulus: 1e15, density: 998.2 };
  const waveSpeed = water.waveSpeed.kernel(rigid);
  const head = water.surgeHead.kernel({ waveSpeed, velocityChange: feetPerSecond * FOOT });
  return water.staticPressure.kernel({ height: head, density: 998.2 }) / PSI;
}

export const WATER_HAMMER: readonly Suite[] = [
  {
    id: 'pool-rules/surge-manual',
    area: 'pool-rules',
    kind: 'published',
    document: 'UFC 3-230-13A / TM 5-813-9',
    at: 'Figure 4-5',
    quantity: 'as named in each case',
    band: { relative: 0.002 },
    bandBecause: 'Printed to three or four digits, with g = 32 ft/s2 and 2.31 ft to a psi.',
    cases: MANUAL,
  },
  {
    id: 'pool-rules/surge-rigid',
    area: 'pool-rules',
    kind: 'published',
    document: 'pump-zone.com, Causes of water hammer',
    at: 'part one',
    quantity: 'surge, psi',
    band: { relative: 0.01 },
    bandBecause:
      'The page names neither its water nor its wave speed; between 10 and 30 °C the wave runs 1 % slower and faster than at 20 °C.',
    cases: [5, 10].map((feetPerSecond, i) => ({
      id: `${feetPerSecond} ft/s stopped`,
      published: [328, 657][i] as number,
      computed: () => rigidSurge(feetPerSecond),
    })),
  },
];
