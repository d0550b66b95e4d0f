/**
 * A network of links between nodes, laid out once, changed and solved again as often as wanted.
 *
 * What it answers: the flow in every link and the potential of every node, from the law of each link, the held
 * potentials and the demands. Looped or not, with pumps, check valves, regulators, throttles and curves, flows
 * running either way. The solver does not know whether it is water or gas.
 *
 * Units: flow m3/s, positive from → to. Potential: head in m, pressure in Pa or pressure squared in Pa², as the
 * caller's laws have it. Ranges: see `law.ts`. Errors: issues, as each member says; an index that the network
 * does not have is a bug of the caller and throws.
 *
 * Source: Todini and Pilati 1988 (global gradient method); Rossman et al., EPANET 2.2 User Manual 2020, for status
 * checks of valves and pumps in it (method only).
 *
 * Worked example: two nodes held at 10 and 0, one link with loss 1000·q·|q| → q = 0.1 m3/s.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { DEFAULT_SETTINGS, iterate, type Outcome, type Settings } from './iterate.ts';
import type { LinkLaw, NetworkSpec } from './law.ts';
import { lawIssues } from './law-check.ts';
import { BLOCKED, HOLDING, OPEN, SHUT } from './link-table.ts';
import { coldStart, installLaw, setShut } from './prepare.ts';
import { networkScale, type Scale } from './scale.ts';
import { NetworkState } from './state.ts';
import { heldNodes, specIssues } from './topology.ts';

export interface SolveOptions extends Partial<Settings> {
  /** Forget the last solution and start afresh. */
  readonly cold?: boolean;
  /**
   * What a part without any held potential is: an `issue` (the rule), or left as it is: its flows are solved,
   * its potentials stand only relative to each other, and `isHeld` tells. A demand in it stays an issue.
   */
  readonly cutOff?: 'issue' | 'leave';
}

export type SolveReport =
  | {
      readonly ok: true;
      readonly iterations: number;
      /** Worst miss of a link law (over the greatest loss) or of continuity (over the greatest flow). */
      readonly residual: number;
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** `blocked`: holds back reverse flow. `holding`: a regulator in charge of its outlet. `shut`: closed, or at rest. */
export type LinkState = 'open' | 'blocked' | 'holding' | 'shut';

/** Backward flow, part of the flow scale, that a blocked link cannot be said to trickle. */
const STRAIN = 1e-7;
/** Change of scale that is worth a new one. */
const RESCALE = 8;
const STATES: Readonly<Record<number, LinkState>> = {
  [OPEN]: 'open',
  [BLOCKED]: 'blocked',
  [HOLDING]: 'holding',
  [SHUT]: 'shut',
};

/** Lays out a network; ill-formed names, laws or values are issues, and nothing is built then. */
export function buildNetwork(spec: NetworkSpec): Result<Network> {
  const issues = [...specIssues(spec), ...spec.links.flatMap((link) => lawIssues(link.id, link.law))];
  if (issues.length > 0) return fail(...issues);
  const network = new Network(spec);
  // Open links count as joined here: what the caller shut may be opened again.
  const apart = network.unheld(() => true);
  return apart.length > 0 ? fail(...apart) : ok(network);
}

export class Network {
  readonly #net: NetworkState;
  readonly #laws: LinkLaw[];
  readonly #nodeIds: readonly string[];
  readonly #linkIds: readonly string[];
  readonly #nodeAt: ReadonlyMap<string, number>;
  readonly #linkAt: ReadonlyMap<string, number>;
  readonly #outcome: Outcome = { converged: false, iterations: 0, residual: 0 };
  readonly #held: Uint8Array;
  #scale: Scale;
  #scaleStale = false;
  #partsStale = true;
  #allHeld = true;
  #warm = false;

  /** Use `buildNetwork`, which checks the specification first. */
  constructor(spec: NetworkSpec) {
    this.#nodeIds = spec.nodes.map((node) => node.id);
    this.#linkIds = spec.links.map((link) => link.id);
    this.#nodeAt = new Map(this.#nodeIds.map((id, n) => [id, n]));
    this.#linkAt = new Map(this.#linkIds.map((id, i) => [id, i]));
    this.#laws = spec.links.map((link) => link.law);
    const fixed = Uint8Array.from(spec.nodes, (node) => (node.fixed === undefined ? 0 : 1));
    const ends = spec.links.map((link) => [this.nodeIndex(link.from), this.nodeIndex(link.to)] as const);
    this.#net = new NetworkState(fixed, ends);
    this.#held = new Uint8Array(fixed.length);
    spec.nodes.forEach((node, n) => {
      this.#net.potential[n] = node.fixed ?? 0;
      this.#net.demand[n] = node.demand ?? 0;
    });
    spec.links.forEach((link, i) => {
      this.#net.links.oneWay[i] = link.oneWay ? 1 : 0;
      this.#net.links.closed[i] = link.closed ? 1 : 0;
    });
    this.#scale = this.#measureScale();
    this.#installAll();
  }

  get nodeCount(): number {
    return this.#net.nodeCount;
  }

  get linkCount(): number {
    return this.#net.links.count;
  }

  nodeIndex(id: string): number {
    return known(this.#nodeAt.get(id), id);
  }

  linkIndex(id: string): number {
    return known(this.#linkAt.get(id), id);
  }

  /** The law of a link as it stands. */
  law(link: number): LinkLaw {
    return known(this.#laws[link], link);
  }

  /** Gives a link another law. Issues of the law are returned, and the old one stays; empty when taken. */
  setLaw(link: number, law: LinkLaw): readonly Issue[] {
    const before = this.law(link);
    const issues = lawIssues(known(this.#linkIds[link], link), law);
    if (issues.length > 0) return issues;
    if (before.type !== law.type) this.#scaleStale = true;
    this.#laws[link] = law;
    if (installLaw(this.#net, link, law, this.#scale)) this.#partsStale = true;
    return issues;
  }

  /** Sets the relative speed of a pump; a link that is no pump is an issue. */
  setSpeed(link: number, speed: number): readonly Issue[] {
    const law = this.law(link);
    if (law.type === 'pump') return this.setLaw(link, { ...law, speed });
    return [
      { code: 'ill-formed', where: known(this.#linkIds[link], link), found: law.type, reason: 'not-a-pump' },
    ];
  }

  /** Shuts or opens a link. */
  setClosed(link: number, closed: boolean): void {
    const law = this.law(link);
    this.#net.links.closed[link] = closed ? 1 : 0;
    if (setShut(this.#net, link, law)) this.#partsStale = true;
  }

  /** Holds a fixed node at another potential; a free node or a value that is no number is an issue. */
  setFixed(node: number, potential: number): readonly Issue[] {
    const where = known(this.#nodeIds[node], node);
    if (!this.#net.fixed[node]) return [{ code: 'ill-formed', where, reason: 'not-a-fixed-node' }];
    if (!Number.isFinite(potential)) return [{ code: 'not-finite', where, found: String(potential) }];
    this.#net.potential[node] = potential;
    this.#scaleStale = true;
    return [];
  }

  /** Draws another flow (m3/s) from a free node; a fixed node or a value that is no number is an issue. */
  setDemand(node: number, demand: number): readonly Issue[] {
    const where = known(this.#nodeIds[node], node);
    if (this.#net.fixed[node]) return [{ code: 'contradiction', where, reason: 'demand-at-fixed-node' }];
    if (!Number.isFinite(demand)) return [{ code: 'not-finite', where, found: String(demand) }];
    this.#net.demand[node] = demand;
    this.#scaleStale = true;
    return [];
  }

  /**
   * Solves from the last solution (or afresh the first time). Converged: see `iterate.ts`. A part without a held
   * potential, or an iteration that does not settle even from a fresh start, is an issue; flows and potentials
   * are then not to be used. Allocates nothing but its answer, unless held potentials or demands were changed.
   */
  solve(options: SolveOptions = {}): SolveReport {
    if (this.#scaleStale) this.#refreshScale();
    if (this.#partsStale) this.#refreshParts();
    if (!this.#allHeld) {
      const issues = this.#cutOffIssues(options.cutOff ?? 'issue');
      if (issues.length > 0) return { ok: false, issues };
    }
    const settings = withDefaults(options);
    const cold = options.cold === true || !this.#warm;
    if (cold) coldStart(this.#net);
    let solved = this.#run(settings);
    if (!solved && !cold) {
      coldStart(this.#net);
      solved = this.#run(settings);
    }
    this.#warm = solved;
    const { iterations, residual } = this.#outcome;
    if (!solved) return { ok: false, issues: [this.#failure()] };
    return { ok: true, iterations, residual };
  }

  /** Flow of a link, m3/s; 0 for one that is shut or blocked. */
  flow(link: number): number {
    const { state, oneWay, q } = this.#net.links;
    const flow = known(q[link], link);
    if (state[link] === BLOCKED || state[link] === SHUT || (oneWay[link] === 1 && flow < 0)) return 0;
    return flow;
  }

  /** Potential of a node. */
  potential(node: number): number {
    return known(this.#net.potential[node], node);
  }

  /** Potential lost from the `from` end of a link to its `to` end; negative where a pump adds. */
  loss(link: number): number {
    const { from, to } = this.#net;
    return this.potential(known(from[link], link)) - this.potential(to[link]!);
  }

  state(link: number): LinkState {
    return known(STATES[known(this.#net.links.state[link], link)], link);
  }

  /** Whether a path of links that are not shut ties the node to a held potential, as of the last solve. */
  isHeld(node: number): boolean {
    return known(this.#held[node], node) === 1;
  }

  /** An issue for every node that no path of `joins` links ties to a fixed one. */
  unheld(joins: (link: number) => boolean): Issue[] {
    const { fixed, from, to, nodeCount } = this.#net;
    this.#held.set(heldNodes({ nodeCount, fixed, from, to, joins }));
    return this.#nodeIds.flatMap((id, n) =>
      this.#held[n] ? [] : [{ code: 'ill-formed', where: id, reason: 'cut-off' }],
    );
  }

  #measureScale(): Scale {
    const { potential, demand, fixed } = this.#net;
    return networkScale({
      laws: this.#laws,
      fixed: [...fixed].flatMap((held, n) => (held ? [potential[n]!] : [])),
      demands: [...demand],
    });
  }

  #refreshScale(): void {
    this.#scaleStale = false;
    const scale = this.#measureScale();
    if (alike(scale.flow, this.#scale.flow) && alike(scale.potential, this.#scale.potential)) return;
    this.#scale = scale;
    this.#installAll();
  }

  #installAll(): void {
    this.#laws.forEach((law, i) => {
      installLaw(this.#net, i, law, this.#scale);
    });
    this.#net.links.regroup();
  }

  #refreshParts(): void {
    this.#partsStale = false;
    const { state } = this.#net.links;
    this.#allHeld = this.unheld((i) => state[i] !== SHUT).length === 0;
  }

  #cutOffIssues(rule: 'issue' | 'leave'): Issue[] {
    return this.#nodeIds.flatMap((where, n) => {
      if (this.#held[n] || (rule === 'leave' && this.#net.demand[n] === 0)) return [];
      return [{ code: 'ill-formed', where, reason: 'cut-off' }];
    });
  }

  #run(settings: Settings): boolean {
    iterate(this.#net, this.#scale, settings, this.#outcome);
    return this.#outcome.converged && this.#strained() < 0;
  }

  /** A blocked link that is asked to pass flow backwards, because a demand can be met in no other way; −1 if none. */
  #strained(): number {
    const { special, specialCount, state, q } = this.#net.links;
    for (let k = 0; k < specialCount; k += 1) {
      const i = special[k]!;
      if (state[i] === BLOCKED && Math.abs(q[i]!) > STRAIN * this.#scale.flow) return i;
    }
    return -1;
  }

  #failure(): Issue {
    const strained = this.#strained();
    if (strained >= 0)
      return { code: 'no-solution', where: this.#linkIds[strained]!, reason: 'demand-behind-one-way-link' };
    const { row, system, nodeCount } = this.#net;
    for (let n = 0; n < nodeCount; n += 1)
      if (row[n]! < system.structure.size && this.#held[n] && system.isFloating(row[n]!))
        return { code: 'no-solution', where: this.#nodeIds[n]!, reason: 'cut-off' };
    return { code: 'not-converged', where: 'network', found: this.#outcome.residual };
  }
}

function withDefaults(options: SolveOptions): Settings {
  return {
    flowTolerance: options.flowTolerance ?? DEFAULT_SETTINGS.flowTolerance,
    headTolerance: options.headTolerance ?? DEFAULT_SETTINGS.headTolerance,
    maxIterations: options.maxIterations ?? DEFAULT_SETTINGS.maxIterations,
  };
}

function alike(a: number, b: number): boolean {
  return a < RESCALE * b && b < RESCALE * a;
}

function known<T>(value: T | undefined, key: string | number): T {
  if (value === undefined) throw new RangeError(`the network has no ${key}`);
  return value;
}
