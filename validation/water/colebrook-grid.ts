/** The Colebrook–White equation solved by an open fluid-mechanics library, over a grid of Re and relative roughness. */
import { evaluate, water } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const REYNOLDS = [4000, 10000, 30000, 100000, 300000, 1000000, 10000000];

/** Relative roughness → f at each Reynolds number. */
const GRID: readonly (readonly [relativeRoughness: number, factors: readonly number[]])[] = [
  [0, [0.0399070141, 0.0308829504, 0.0234829546, 0.0179897731, 0.0144630325, 0.011645041, 0.0081026694]],
  [1e-6, [0.0399080294, 0.0308844981, 0.0234856853, 0.0179951932, 0.0144736496, 0.0116681555, 0.0082131804]],
  [1e-5, [0.0399171669, 0.0308984231, 0.0235102361, 0.0180438029, 0.0145682257, 0.0118695448, 0.0089957117]],
  [0.0001, [0.0400084312, 0.0310372122, 0.0237532264, 0.0185138661, 0.0154306061, 0.0134414377, 0.012166081]],
  [0.001, [0.0409103899, 0.0323818064, 0.0259697347, 0.0221745359, 0.0206032925, 0.0199434658, 0.0196670524]],
  [0.01, [0.0490822694, 0.0431265847, 0.039822306, 0.0385035435, 0.038106218, 0.0379647419, 0.0379098258]],
  [0.05, [0.0769868349, 0.0738012756, 0.07231353, 0.0717809294, 0.0716275609, 0.0715737539, 0.0715529818]],
];

const CASES: readonly Case[] = GRID.flatMap(([relativeRoughness, factors]) =>
  factors.map((published, i) => {
    const reynolds = REYNOLDS[i] as number;
    return {
      id: `Re ${reynolds}, ε/D ${relativeRoughness}`,
      published,
      computed: () => evaluate(water.frictionFactor, { reynolds, relativeRoughness }),
    };
  }),
);

export const COLEBROOK_GRID: Suite = {
  id: 'water/colebrook-grid',
  area: 'water',
  kind: 'stored',
  document: 'Open library fluids 1.3.1 (CalebBell/fluids)',
  at: 'exact solution of Colebrook, J. Inst. Civ. Eng. 11 (1939)',
  quantity: 'Darcy friction factor',
  band: { absolute: 6e-11 },
  bandBecause: 'Stored to ten decimals.',
  cases: CASES,
};
