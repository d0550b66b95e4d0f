/**
 * A network of links between nodes, laid out once, changed and solved again as often as wanted.
 *
 * What it answers: the flow in every link and the potential of every node, from the law of each link, the held
 * potentials and the demands. Looped or not, with pumps, check valves, regulators, throttles and curves, flows
 * running either way. The solver does not know whether it is water or gas.
 *
 * Units: flow m3/s, positive from → to. Potential: head in m, pressure in Pa or pressure squared in Pa², as the
 * caller's laws have it. Ranges: see `law.ts`. Errors: issues, as each member says; an index or id that the
 * network does not have is a bug of the caller and throws.
 *
 * Source: Todini and Pilati 1988 (global gradient method); Rossman et al., EPANET 2.2 User Manual 2020, for status
 * checks of valves and pumps in it (method only).
 *
 * Worked example: two nodes held at 10 and 0, one link with loss 1000·q·|q| → q = 0.1 m3/s.
 */
import type { Issue } from '../../trace/index.ts';
import { iterate, type Outcome, type Settings } from './iterate.ts';
import type { LinkLaw, NetworkSpec } from './law.ts';
import { changeIssues } from './law-check.ts';
import { BLOCKED, OPEN, SHUT } from './link-table.ts';
import { known, type Names } from './names.ts';
import { coldStart, installLaw, setShut } from './prepare.ts';
import {
  type LinkState,
  optionsOf,
  type SolveOptions,
  type SolveReport,
  STATES,
  settingsOf,
} from './report.ts';
import { alike, networkScale, type Scale } from './scale.ts';
import { NetworkState } from './state.ts';
import { strainedLink } from './status.ts';
import { refill, retangent } from './sweep.ts';
import { type Graph, heldNodes, type NetworkNames } from './topology.ts';

/** What the head of this file describes; made by `buildNetwork`. */
export class Network {
  readonly #net: NetworkState;
  readonly #laws: LinkLaw[];
  readonly #nodes: Names;
  readonly #links: Names;
  readonly #outcome: Outcome = { converged: false, iterations: 0, residual: 0 };
  #held: Uint8Array;
  #scale: Scale;
  /** Held potentials, demands or kinds of law changed: what is large and small may have, too. */
  #scaleStale = false;
  /** Links were shut or opened: parts may be cut off. */
  #partsStale = true;
  /** The last solve ended well: its flows are a start. */
  #warm = false;
  /** The next system is filled for the present flows and laws. */
  #filled = false;

  /** Use `buildNetwork`, which checks the specification first. */
  constructor({ nodes, links }: NetworkSpec, names: NetworkNames, graph: Graph) {
    this.#nodes = names.nodes;
    this.#links = names.links;
    this.#laws = links.map((link) => link.law);
    this.#net = new NetworkState(graph);
    this.#held = new Uint8Array(nodes.length);
    const { potential, demand, cell, links: table } = this.#net;
    for (let n = 0; n < nodes.length; n += 1) {
      potential[cell[n]!] = nodes[n]!.fixed ?? 0;
      demand[cell[n]!] = nodes[n]!.demand ?? 0;
    }
    for (let i = 0; i < links.length; i += 1) {
      table.check[i] = links[i]!.oneWay ? 1 : 0;
      table.closed[i] = links[i]!.closed ? 1 : 0;
    }
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
    return this.#nodes.index(id);
  }

  linkIndex(id: string): number {
    return this.#links.index(id);
  }

  /** The law of a link as it stands. */
  law(link: number): LinkLaw {
    return known(this.#laws[link], link);
  }

  /** Gives a link another law. Issues of the law are returned, and the old one stays; empty when taken. */
  setLaw(link: number, law: LinkLaw): readonly Issue[] {
    const before = this.law(link);
    const issues = changeIssues(this.#links.id(link), before, law);
    if (issues.length > 0) return issues;
    if (before.type !== law.type) this.#scaleStale = true;
    this.#laws[link] = law;
    const onlyTangent = installLaw(this.#net, link, law, this.#scale);
    if (!onlyTangent) this.#net.links.regroup();
    if (onlyTangent && this.#filled && this.#net.links.state[link] === OPEN) retangent(this.#net, link);
    else this.#filled = false;
    if (!onlyTangent) this.#partsStale = true;
    return issues;
  }

  /** Sets the relative speed of a pump; a link that is no pump is an issue. */
  setSpeed(link: number, speed: number): readonly Issue[] {
    const law = this.law(link);
    if (law.type === 'pump') return this.setLaw(link, { ...law, speed });
    return [{ code: 'ill-formed', where: this.#links.id(link), found: law.type, reason: 'not-a-pump' }];
  }

  /** Shuts or opens a link. */
  setClosed(link: number, closed: boolean): void {
    const law = this.law(link);
    this.#net.links.closed[link] = closed ? 1 : 0;
    if (!setShut(this.#net, link, law)) return;
    this.#net.links.regroup();
    // What hangs together already does so with one way more.
    if (closed || this.#held.includes(0)) this.#partsStale = true;
    this.#filled = false;
  }

  /** Holds a fixed node at another potential; a free node or a value that is no number is an issue. */
  setFixed(node: number, potential: number): readonly Issue[] {
    const where = this.#nodes.id(node);
    if (!this.#net.fixed[node]) return [{ code: 'ill-formed', where, reason: 'not-a-fixed-node' }];
    if (!Number.isFinite(potential)) return [{ code: 'not-finite', where, found: String(potential) }];
    this.#net.potential[this.#net.cell[node]!] = potential;
    this.#scaleStale = true;
    return [];
  }

  /** Draws another flow (m3/s) from a free node; a fixed node or a value that is no number is an issue. */
  setDemand(node: number, demand: number): readonly Issue[] {
    const where = this.#nodes.id(node);
    if (this.#net.fixed[node]) return [{ code: 'contradiction', where, reason: 'demand-at-fixed-node' }];
    if (!Number.isFinite(demand)) return [{ code: 'not-finite', where, found: String(demand) }];
    this.#net.demand[this.#net.cell[node]!] = demand;
    this.#scaleStale = true;
    return [];
  }

  /**
   * Solves from the last solution (or afresh the first time). Converged: see `iterate.ts`. A part without a held
   * potential, a demand that no link can serve, or an iteration that does not settle even from a fresh start, is an
   * issue; flows and potentials are then not to be used. Allocates nothing but its answer, unless held potentials,
   * demands or kinds of law were changed.
   */
  solve(options?: SolveOptions): SolveReport {
    if (this.#scaleStale) this.#refreshScale();
    if (this.#partsStale) this.#refreshParts();
    const { cold = false, cutOff = 'issue' } = optionsOf(options);
    const apart = this.#cutOffIssues(cutOff);
    if (apart.length > 0) return { ok: false, issues: apart };
    const settings = settingsOf(options);
    const solved = (this.#warm && !cold && this.#run(settings)) || this.#runCold(settings);
    this.#warm = solved;
    this.#filled = solved;
    if (!solved) return { ok: false, issues: [this.#failure()] };
    const { iterations, residual } = this.#outcome;
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
    return this.#net.potential[known(this.#net.cell[node], node)]!;
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

  #measureScale(): Scale {
    const { potential, demand, rows, nodeCount } = this.#net;
    const fixed = potential.subarray(rows, nodeCount);
    return networkScale({ laws: this.#laws, fixed, demands: demand.subarray(0, rows) });
  }

  #refreshScale(): void {
    this.#scaleStale = false;
    this.#filled = false;
    const scale = this.#measureScale();
    if (alike(scale, this.#scale)) return;
    this.#scale = scale;
    this.#installAll();
  }

  #installAll(): void {
    this.#net.links.slopeFloor = this.#scale.slopeFloor;
    this.#laws.forEach((law, i) => {
      installLaw(this.#net, i, law, this.#scale);
    });
    this.#net.links.regroup();
  }

  #refreshParts(): void {
    this.#partsStale = false;
    const { state } = this.#net.links;
    this.#held = heldNodes(this.#net, (i) => state[i] !== SHUT);
  }

  #cutOffIssues(rule: 'issue' | 'leave'): readonly Issue[] {
    if (!this.#held.includes(0)) return NO_ISSUES;
    return this.#nodes.ids.flatMap((where, n) => {
      if (this.#held[n] || (rule === 'leave' && this.#net.demand[this.#net.cell[n]!] === 0)) return [];
      return [{ code: 'ill-formed', where, reason: 'cut-off' }];
    });
  }

  #runCold(settings: Settings): boolean {
    coldStart(this.#net);
    this.#filled = false;
    return this.#run(settings);
  }

  #run(settings: Settings): boolean {
    if (!this.#filled) refill(this.#net);
    iterate(this.#net, this.#scale, settings, this.#outcome);
    return this.#outcome.converged && strainedLink(this.#net, this.#scale) < 0;
  }

  #failure(): Issue {
    const strained = strainedLink(this.#net, this.#scale);
    if (strained >= 0)
      return { code: 'no-solution', where: this.#links.id(strained), reason: 'demand-behind-one-way-link' };
    const loose = this.#net.looseNode();
    if (loose >= 0) return { code: 'no-solution', where: this.#nodes.id(loose), reason: 'cut-off' };
    return { code: 'not-converged', where: 'network', found: this.#outcome.residual };
  }
}

const NO_ISSUES: readonly Issue[] = [];
