/** Valves: what trade notes and an open network program print of their curves. */
import { quantity, water } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { INCH } = quantity;

const LINEAR: water.Valve = { type: 'linear', coefficient: 100 * water.CV };
const EQUAL: water.Valve = { type: 'equal-percentage', coefficient: 100 * water.CV, rangeability: 50 };

const cv = (valve: water.Valve, opening: number): number => water.passing(valve, opening) / water.CV;

const CURVES: readonly Case[] = [
  { id: 'linear, Cv 100, 10 % open', published: 10, computed: () => cv(LINEAR, 0.1) },
  { id: 'linear, Cv 100, 20 % open', published: 20, computed: () => cv(LINEAR, 0.2) },
  ...[0.2, 0.4, 0.6, 0.8].map((opening) => ({
    id: `equal percentage, a tenth more than ${opening * 100} % open, ratio`,
    published: 1.5,
    computed: () => cv(EQUAL, opening + 0.1) / cv(EQUAL, opening),
  })),
];

/** K of a valve that passes a share of what it passes open. */
function throttledK(openK: number, share: number): number {
  const insideDiameter = 12 * INCH;
  const open = water.coefficientOfK.kernel({ k: openK, insideDiameter });
  return water.kOfCoefficient.kernel({ coefficient: open * share, insideDiameter });
}

export const VALVES: readonly Suite[] = [
  {
    id: 'water/valve-curves',
    area: 'water',
    kind: 'published',
    document: 'valve-world.net, control valve questions and answers',
    at: 'number 13',
    quantity: 'Cv, or the ratio of two',
    band: { relative: 0.02 },
    bandBecause: '"About 50 per cent" for each tenth of travel; a rangeability of 50 gives 48 %.',
    cases: CURVES,
  },
  {
    id: 'water/positional-valve',
    area: 'water',
    kind: 'published',
    document: 'OWA-EPANET, tests of the positional control valve',
    at: 'tests/test_valve.cpp: K open 0.19, 12.7 % of the flow coefficient at 35 % open',
    quantity: 'loss coefficient K',
    band: { relative: 5e-4 },
    bandBecause: 'Printed to four digits.',
    cases: [{ id: '35 % open', published: 11.78, computed: () => throttledK(0.19, 0.127) }],
  },
];
