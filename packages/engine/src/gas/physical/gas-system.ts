/**
 * The true pressures and flows of a gas system, laid out once and solved for as many cases as wanted.
 *
 * What it answers: the gauge pressure at every junction and the flow in every link, by physical law (`pipe-law.ts`,
 * `corrugated-law.ts`, `link-law.ts`), for any set of loads: all off (lock-up), the heater alone, everything on.
 * Trees and loops, several stages of regulators.
 *
 * A case in which a burner's inlet falls under its manifold pressure cannot run at full flow; it is solved again with
 * burners that take less at less pressure, and says so (`starved`), so that the pressures are those a gauge would
 * show. Pressure trapped behind a regulator that once stood higher is not followed.
 *
 * Source: the laws named; the network method of `numerics/network`.
 * Range: as `spec-check.ts` has it; gauge up to 1 MPa.
 * Errors: issues of the numbers, of junctions that are cut off, of loops whose heights do not close, and of a network
 * that does not converge. A junction or load that the system does not have is the caller's bug and throws.
 *
 * Worked example: 3/4 in Schedule 40, 60 ft from a supply of 7 in w.c., 137 ft3/h → about 6.5 in w.c.
 */
import {
  buildNetwork,
  type LinkSpec,
  type LinkState,
  type Network,
  type NodeSpec,
} from '../../numerics/index.ts';
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { fillAtRest, type RestLink, restState } from './at-rest.ts';
import { carryingLinks } from './dead-branches.ts';
import { GasLayout } from './gas-layout.ts';
import { GasSolution } from './gas-solution.ts';
import { junctionHeights } from './heights.ts';
import { linkLaw } from './link-law.ts';
import { burnerLaw } from './load-law.ts';
import { gasSpecIssues } from './spec-check.ts';
import type { GasSystemSpec } from './system-spec.ts';

/** Which loads run: none, all, or those named; or a share of its full flow for each load. */
export type GasCase = 'none' | 'all' | readonly string[] | ((load: string) => number);

/** Lays a gas system out. */
export function compileGasSystem(spec: GasSystemSpec): Result<GasSystem> {
  const issues = gasSpecIssues(spec);
  if (issues.length > 0) return fail(...issues);
  const heights = junctionHeights(spec);
  if (!heights.ok) return heights;
  const layout = new GasLayout(spec, heights.value);
  const links: LinkSpec[] = [];
  const wrong: Issue[] = [];
  for (const link of spec.links) {
    const { id, from, to, closed = false } = link;
    const law = linkLaw(link, layout.place(link));
    if (law.ok) links.push({ id, from, to, closed, law: law.value });
    else wrong.push(...named(id, law.issues));
  }
  if (wrong.length > 0) return fail(...wrong);
  const network = buildNetwork({ nodes: layout.nodes(), links });
  return network.ok ? ok(new GasSystem(layout, network.value, links)) : network;
}

function named(id: string, issues: readonly Issue[]): Issue[] {
  return issues.map((issue) => ({ ...issue, where: `${id}.${issue.where}` }));
}

/** A gas system laid out: solved for one case after another, warm from the one before. */
export class GasSystem {
  readonly layout: GasLayout;
  readonly #network: Network;
  readonly #links: readonly LinkSpec[];
  /** Junction of each load. */
  readonly #loadAt: readonly number[];
  readonly #wanted: Float64Array;
  readonly #demand: Float64Array;
  readonly #supply: number;
  readonly #restLinks: readonly RestLink[];

  /** Use `compileGasSystem`, which checks the specification first. */
  constructor(layout: GasLayout, network: Network, links: readonly LinkSpec[]) {
    this.layout = layout;
    this.#network = network;
    this.#links = links;
    this.#loadAt = layout.spec.loads.map((load) => layout.node(load.node));
    this.#wanted = new Float64Array(layout.spec.loads.length);
    this.#demand = new Float64Array(layout.nodeIds.length);
    this.#supply = layout.node(layout.spec.supply.node);
    this.#restLinks = layout.spec.links.map((link) => layout.restLink(link));
  }

  /** Pressures and flows of a case. */
  solve(running: GasCase): Result<GasSolution> {
    const issue = this.#want(running);
    if (issue !== undefined) return fail(issue);
    const carrying = carryingLinks(this.#restLinks, this.#demand, this.#supply);
    const by = { carrying, taken: this.#wanted };
    if (!carrying.includes(1)) return this.#read(undefined, by);
    for (let node = 0; node < this.#demand.length; node += 1)
      if (node !== this.#supply) this.#network.setDemand(node, this.#demand[node]!);
    for (let link = 0; link < carrying.length; link += 1) this.#network.setClosed(link, carrying[link] === 0);
    const report = this.#network.solve({ cutOff: 'leave' });
    if (!report.ok)
      // Loads that ask for more than can be had may leave no solution; burners that take less always have one.
      return report.issues.some((one) => one.code === 'ill-formed') ? report : this.#solveStarved(carrying);
    const solution = this.#read(this.#network, by);
    return solution.ok && this.#starves(solution.value) ? this.#solveStarved(carrying) : solution;
  }

  /** Sets flows of the loads and sums them at their junctions. */
  #want(running: GasCase): Issue | undefined {
    const { loads } = this.layout.spec;
    if (Array.isArray(running))
      for (const id of running)
        if (!loads.some((load) => load.id === id)) throw new RangeError(`the gas system has no load ${id}`);
    this.#demand.fill(0);
    for (const [i, load] of loads.entries()) {
      const part = share(running, load.id);
      if (!(part >= 0 && part <= 2))
        return {
          code: 'out-of-range',
          where: `${load.id}.share`,
          found: part,
          min: 0,
          max: 2,
          kind: 'ratio',
        };
      this.#wanted[i] = part * load.flow;
      this.#demand[this.#loadAt[i]!]! += this.#wanted[i]!;
    }
    return undefined;
  }

  /** Whether a running load stands below its manifold pressure, or any junction has none that is real. */
  #starves(solution: GasSolution): boolean {
    const { loads } = this.layout.spec;
    return (
      solution.pressures.some((pressure) => !(pressure > -PRESSURE_OF_NOTHING)) ||
      loads.some(
        (load, i) =>
          this.#wanted[i]! > 0 && solution.pressures[this.#loadAt[i]!]! < this.layout.manifold(load),
      )
    );
  }

  /** The same case with burners that take less at less pressure. */
  #solveStarved(carrying: Uint8Array): Result<GasSolution> {
    const { layout } = this;
    const nodes: NodeSpec[] = layout.nodes();
    const links: LinkSpec[] = this.#links.map((link, i) => ({ ...link, closed: carrying[i] === 0 }));
    const burners: number[] = [];
    for (const [i, load] of layout.spec.loads.entries()) {
      const flow = this.#wanted[i]!;
      burners.push(flow > 0 ? links.length : -1);
      if (flow === 0) continue;
      const at = this.#loadAt[i]!;
      const [outside, factor] = [layout.outside[at]!, layout.factors[at]!];
      const law = burnerLaw({ flow, manifoldPressure: layout.manifold(load), outside, factor });
      nodes.push({ id: `air of ${load.id}`, fixed: factor * outside ** 2 });
      links.push({ id: `burner of ${load.id}`, from: load.node, to: `air of ${load.id}`, law });
    }
    const built = buildNetwork({ nodes, links });
    if (!built.ok) return built;
    const network = built.value;
    const report = network.solve({ cutOff: 'leave' });
    if (!report.ok) return report;
    const taken = Float64Array.from(burners, (link) => (link < 0 ? 0 : network.flow(link)));
    return this.#read(network, { carrying, taken });
  }

  /** Reads a solved network, or none where nothing flows; what carries nothing gets its pressure as at rest. */
  #read(
    network: Network | undefined,
    { carrying, taken }: { carrying: Uint8Array; taken: Float64Array },
  ): Result<GasSolution> {
    const { layout } = this;
    const potentials = this.#potentials(network);
    fillAtRest(potentials, this.#restLinks, carrying);
    const cutOff = layout.nodeIds.filter((_, node) => Number.isNaN(potentials[node]));
    if (cutOff.length > 0)
      return fail(...cutOff.map((where): Issue => ({ code: 'ill-formed', where, reason: 'cut-off' })));
    const flows = new Float64Array(carrying.length);
    const states: LinkState[] = [];
    for (let link = 0; link < carrying.length; link += 1) {
      const carries = network !== undefined && carrying[link] === 1;
      if (carries) flows[link] = network.flow(link);
      states.push(carries ? network.state(link) : restState(this.#restLinks[link]!, potentials));
    }
    const pressures = new Float64Array(potentials.length);
    for (let node = 0; node < pressures.length; node += 1)
      pressures[node] = layout.gauge(node, potentials[node]!);
    return ok(
      new GasSolution(layout, {
        pressures,
        flows,
        wanted: this.#wanted.slice(),
        taken: taken.slice(),
        states,
      }),
    );
  }

  /** By junction; NaN where the network does not tell. */
  #potentials(network: Network | undefined): Float64Array {
    const potentials = new Float64Array(this.#demand.length).fill(Number.NaN);
    if (network === undefined) potentials[this.#supply] = this.layout.supplyPotential;
    else
      for (let node = 0; node < potentials.length; node += 1)
        if (network.isHeld(node)) potentials[node] = network.potential(node);
    return potentials;
  }
}

/** A gauge that shows this much below the air outside is the weight of propane in a riser, not a shortage, Pa. */
const PRESSURE_OF_NOTHING = 50;

function share(running: GasCase, load: string): number {
  if (running === 'none') return 0;
  if (running === 'all') return 1;
  return typeof running === 'function' ? running(load) : running.includes(load) ? 1 : 0;
}
