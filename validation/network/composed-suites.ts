/** Composed looped networks of 10 to 5,000 links, solved by two programs. */
import type { Case, Suite } from '../suite.ts';
import { flowCases, headCases, once, withoutReservoirs } from './compare.ts';
import { composeNetwork, seeded } from './composed.ts';
import { ENGINE_VERSION, networkText, solveText } from './epanet-run.ts';
import { EPANET_LAWS, solveOurs } from './ours.ts';

/** So many links and nodes of a large network become cases, drawn by the seed. */
const SAMPLE = 150;

function sample(cases: readonly Case[], seed: number): Case[] {
  if (cases.length <= SAMPLE) return [...cases];
  const random = seeded(seed);
  const drawn = cases.map((one) => ({ one, ticket: random() })).sort((a, b) => a.ticket - b.ticket);
  return drawn.slice(0, SAMPLE).map(({ one }) => one);
}

/**
 * EPANET leaves a check valve as it is while its flow is inside 1e-4 ft3/s of zero, so that one may stand open
 * backwards, or shut, where the exact answer is the other. With this seed none does.
 */
const SEED = 2;
const SIZES = [10, 100, 1000, 5000];
const FORMULAS = ['H-W', 'D-W'] as const;

const runs = SIZES.flatMap((links) =>
  FORMULAS.map((friction) => {
    const network = composeNetwork({ links, seed: SEED, friction });
    const theirs = withoutReservoirs(solveText(networkText(network)), network.reservoirs);
    const ours = once(() => solveOurs(network, EPANET_LAWS));
    return {
      flows: sample(flowCases(network.id, theirs, ours), links),
      heads: sample(headCases(network.id, theirs, ours), links),
    };
  }),
);

const SHARED = {
  area: 'network',
  kind: 'library',
  document: `EPANET ${ENGINE_VERSION} through epanet-js 0.9.0`,
} as const;

export const COMPOSED_SUITES: readonly Suite[] = [
  {
    ...SHARED,
    id: 'network/composed-flows',
    at: 'seeded grids of 10, 100, 1000 and 5000 links, with EPANET’s link laws, up to 150 links of each',
    quantity: 'flow, US gpm',
    band: { relative: 1e-6, absolute: 1e-6 },
    bandBecause:
      'the goal set for two solvers of the same equations; the absolute part is the flow tolerance EPANET works to',
    cases: runs.flatMap(({ flows }) => flows),
  },
  {
    ...SHARED,
    id: 'network/composed-heads',
    at: 'the same grids, up to 150 nodes of each',
    quantity: 'head, ft',
    band: { relative: 1e-6 },
    bandBecause: 'the goal set for two solvers of the same equations',
    cases: runs.flatMap(({ heads }) => heads),
  },
];
