/**
 * Ten equipment pads: stored solutions of an independent program, the same program run beside ours, and the
 * deviation that our own laws make.
 */
import type { Case, Suite } from '../suite.ts';
import { flowCases, headCases, once, withoutReservoirs } from './compare.ts';
import { ENGINE_VERSION, networkText, type Solved, solveText } from './epanet-run.ts';
import { EPANET_LAWS, type Laws, OWN_LAWS, solveOurs } from './ours.ts';
import type { Pad } from './pad.ts';
import { PADS } from './pads/index.ts';

type Values = (pad: Pad, theirs: Solved, ours: () => Solved) => Case[];

const flows: Values = (pad, theirs, ours) => flowCases(pad.id, theirs, ours);
const heads: Values = (pad, theirs, ours) =>
  headCases(pad.id, withoutReservoirs(theirs, pad.reservoirs), ours);

const stored = (pad: Pad): Solved => ({
  flows: new Map(Object.entries(pad.flows)),
  heads: new Map(Object.entries(pad.heads)),
});
const live = new Map(PADS.map((pad) => [pad, solveText(networkText(pad))]));

function cases(theirs: (pad: Pad) => Solved, laws: Laws, values: Values): Case[] {
  return PADS.flatMap((pad) =>
    values(
      pad,
      theirs(pad),
      once(() => solveOurs(pad, laws)),
    ),
  );
}

const STORED = {
  area: 'network',
  kind: 'stored',
  document: 'OWA-EPANET 2.2.0, ten composed equipment pads',
  bandBecause: 'the tolerance its collection suggests',
} as const;
const LIVE = {
  area: 'network',
  kind: 'library',
  document: `EPANET ${ENGINE_VERSION} through epanet-js 0.9.0`,
} as const;

/** A shut pump and a shut check valve in line: nothing but EPANET's leaks sets what stands between them. */
const DEAD_PART =
  'pad13 has a dead pipe between a pump that is off and a check valve that holds; EPANET lets the valve trickle ' +
  'back (1e-4 gpm, below its own flow tolerance) and the pump leak, and the head between them follows from these leaks';

export const PAD_SUITES: readonly Suite[] = [
  {
    ...STORED,
    id: 'network/pads-stored-flows',
    at: 'flow of every link',
    quantity: 'flow, US gpm',
    band: { relative: 0.0005, absolute: 0.0005 },
    cases: cases(stored, EPANET_LAWS, flows),
  },
  {
    ...STORED,
    id: 'network/pads-stored-heads',
    at: 'head of every junction',
    quantity: 'head, ft',
    band: { absolute: 0.02 },
    cases: cases(stored, EPANET_LAWS, heads),
    misfits: [{ cases: ['pad13 PD2'], because: DEAD_PART }],
  },
  {
    ...LIVE,
    id: 'network/pads-live-flows',
    at: 'the same pads with EPANET’s own link laws, flow of every link',
    quantity: 'flow, US gpm',
    band: { relative: 1e-6, absolute: 1e-9 },
    bandBecause: 'the goal set for two solvers of the same equations; the absolute part is for flows of zero',
    cases: cases((pad) => live.get(pad)!, EPANET_LAWS, flows),
    misfits: [{ cases: ['pad13 CV2'], because: DEAD_PART }],
  },
  {
    ...LIVE,
    id: 'network/pads-live-heads',
    at: 'the same pads with EPANET’s own link laws, head of every junction',
    quantity: 'head, ft',
    band: { relative: 1e-6 },
    bandBecause: 'the goal set for two solvers of the same equations',
    cases: cases((pad) => live.get(pad)!, EPANET_LAWS, heads),
    misfits: [{ cases: ['pad13 PD2'], because: DEAD_PART }],
  },
  {
    ...LIVE,
    id: 'network/pads-own-laws-flows',
    at: 'the same pads with our own laws (Colebrook, standard gravity, check valves that hold)',
    quantity: 'flow, US gpm',
    band: { relative: 0.0005, absolute: 0.0005 },
    bandBecause:
      'our minor losses are 0.08 % above EPANET’s rounded 0.02517, our gravity 0.09 % below its 32.2 ft/s2, and ' +
      'Colebrook stands up to 1 % from Swamee–Jain; half of that and less reaches the flow',
    cases: cases((pad) => live.get(pad)!, OWN_LAWS, flows),
  },
  {
    ...LIVE,
    id: 'network/pads-own-laws-heads',
    at: 'the same pads with our own laws, head of every junction',
    quantity: 'head, ft',
    band: { absolute: 0.03 },
    bandBecause: 'as for the flows, on heads up to 90 ft',
    cases: cases((pad) => live.get(pad)!, OWN_LAWS, heads),
  },
];
