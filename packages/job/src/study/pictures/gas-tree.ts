/**
 * The gas piping as a tree from the supply to every appliance, as far as it is drawn: what hangs where, what leads to
 * the heater that is looked at, and what is not connected to anything. Structure only; pressures are another matter.
 */
import {
  type GasPlan,
  type PlannedLoad,
  type PlannedRegulator,
  type PlannedSegment,
  SUPPLY,
} from '../plant/gas/gas-plan.ts';

export type TreeLink =
  | { readonly type: 'section'; readonly planned: PlannedSegment }
  | { readonly type: 'regulator'; readonly planned: PlannedRegulator };

export interface TreeBranch {
  readonly link: TreeLink;
  /** Drawn from its far end towards the supply. */
  readonly turned: boolean;
  readonly end: TreeNode;
}

export interface TreeNode {
  readonly id: string;
  readonly loads: readonly PlannedLoad[];
  /** The way on to the heater comes last, so that side branches stand beside it. */
  readonly branches: readonly TreeBranch[];
  /** On the way to the heater that is looked at. */
  readonly leads: boolean;
}

export interface GasTreeDrawn {
  readonly root: TreeNode;
  /** Ids of the junctions that gas from the supply reaches. */
  readonly reached: ReadonlySet<string>;
  /** Sections that close a loop: drawn at their near end, with no new junction behind them. */
  readonly closing: readonly PlannedSegment[];
  /** What hangs on nothing yet. */
  readonly loose: {
    readonly segments: readonly PlannedSegment[];
    readonly regulators: readonly PlannedRegulator[];
    readonly loads: readonly PlannedLoad[];
  };
}

interface Step {
  readonly link: TreeLink;
  readonly turned: boolean;
  readonly from: string;
  readonly to: string;
}

/** The tree of a plan; `heater` is the load whose way comes last at every junction. */
export function drawnTree(plan: GasPlan, heater: string | undefined): GasTreeDrawn {
  const { steps, closing } = spread(plan);
  const reached = new Set([SUPPLY, ...steps.map((step) => step.to)]);
  const target = plan.loads.find((load) => load.kind === 'heater' && load.id === heater)?.node;
  const leading = wayTo(target, steps);
  const used = new Set([...steps.map(({ link }) => link.planned), ...closing]);
  return {
    root: nodeAt(SUPPLY, { plan, steps, leading }),
    reached,
    closing,
    loose: {
      segments: plan.segments.filter((one) => !used.has(one)),
      regulators: plan.regulators.filter((one) => !used.has(one)),
      loads: plan.loads.filter((load) => !reached.has(load.node)),
    },
  };
}

/** Junction by junction away from the supply, near ones first. */
function spread(plan: GasPlan): { steps: readonly Step[]; closing: readonly PlannedSegment[] } {
  const links = linksOf(plan);
  const inside = new Set([SUPPLY]);
  const used = new Set<TreeLink>();
  const steps: Step[] = [];
  const closing: PlannedSegment[] = [];
  for (const node of inside) {
    for (const link of links) {
      const { from, to } = link.planned;
      const turned = from !== node;
      if (used.has(link) || (turned && (to !== node || link.type === 'regulator'))) continue;
      const end = turned ? from : to;
      if (end === '') continue;
      used.add(link);
      if (!inside.has(end)) steps.push({ link, turned, from: node, to: end });
      else if (link.type === 'section') closing.push(link.planned);
      inside.add(end);
    }
  }
  return { steps, closing };
}

function linksOf({ segments, regulators }: GasPlan): readonly TreeLink[] {
  return [
    ...segments.map((planned): TreeLink => ({ type: 'section', planned })),
    ...regulators.map((planned): TreeLink => ({ type: 'regulator', planned })),
  ];
}

/** Junctions between the supply and one of them, both with it. */
function wayTo(target: string | undefined, steps: readonly Step[]): ReadonlySet<string> {
  const way = new Set<string>();
  let at = target;
  while (at !== undefined && !way.has(at)) {
    way.add(at);
    const to = at;
    at = steps.find((step) => step.to === to)?.from;
  }
  return way.has(SUPPLY) ? way : new Set();
}

interface Whole {
  readonly plan: GasPlan;
  readonly steps: readonly Step[];
  readonly leading: ReadonlySet<string>;
}

function nodeAt(id: string, whole: Whole): TreeNode {
  const { plan, steps, leading } = whole;
  const branches = steps
    .filter((step) => step.from === id)
    .map(({ link, turned, to }): TreeBranch => ({ link, turned, end: nodeAt(to, whole) }));
  return {
    id,
    loads: plan.loads.filter((load) => load.node === id),
    branches: branches.sort((a, b) => Number(a.end.leads) - Number(b.end.leads)),
    leads: leading.has(id),
  };
}
