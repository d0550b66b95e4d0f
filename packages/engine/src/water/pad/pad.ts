/**
 * A pad laid out once and put into one state after another.
 *
 * What it answers: the flow through every part and the pressure at every point, for a pump speed, a filter loading, a
 * position of the valves, a bypass opening and a water temperature. The network solver does the solving; this class
 * turns a state into laws and back.
 *
 * Units SI; heights over one datum. Errors: `buildPad` refuses an ill-formed specification and a state out of range
 * with issues; a state without solution is an issue of `solve`.
 *
 * Source: the formulas of each part; see `numerics/network` for the method.
 *
 * Worked example: see `pad.test.ts`, a pad whose operating point follows from one quadratic.
 */
import { buildNetwork, type LinkLaw, type Network, type SolveReport } from '../../numerics/index.ts';
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { lossLink } from '../loss/loss-law.ts';
import { passing } from '../valve/characteristic.ts';
import { propertiesAt, type WaterProperties } from '../water-at.ts';
import { padIssues, stateIssues } from './check.ts';
import { type Layout, type LinkPart, layOut, portLaw, type Side, valveResistance } from './layout.ts';
import { itemLaw } from './line.ts';
import { type PadPlaces, placesOf } from './places.ts';
import type { BasinBranch, PadSpec, PadState, PadWear } from './spec.ts';

/** Lays a pad out; what is ill-formed or out of range is an issue, and nothing is built then. */
export function buildPad(spec: PadSpec): Result<Pad> {
  const issues = padIssues(spec);
  if (issues.length > 0) return fail(...issues);
  const layout = layOut(spec, propertiesAt(spec.temperature).viscosity);
  const network = buildNetwork(layout);
  return network.ok ? ok(new Pad(spec, layout, network.value)) : network;
}

/** What a law depends on besides its part; a law is renewed only where one of these has changed. */
interface Applied {
  speed: number;
  loading: number;
  bypass: number;
  temperature: number;
  wear: Required<PadWear>;
}

/** Opening under which a valve counts as shut: its resistance would be beyond all numbers. */
const SHUT = 1e-6;

/** Speed ratio under which the pump counts as off. */
const STANDSTILL = 1e-3;

/** No wear. */
export const AS_DRAWN: Required<PadWear> = { pump: 1, suction: 1, heater: 1, returns: 1 };

/**
 * A pad in one state at a time; see the head of this file. It holds its last solution, from which the next one starts,
 * so that one pad must not be shared between searches that run through each other.
 */
export class Pad {
  readonly spec: PadSpec;
  readonly layout: Layout;
  readonly network: Network;
  #water: WaterProperties;
  #applied: Applied;
  readonly places: PadPlaces;
  readonly #openings: number[];
  #bypassFlow = 0;

  /** Use `buildPad`, which checks the specification first. */
  constructor(spec: PadSpec, layout: Layout, network: Network) {
    this.spec = spec;
    this.layout = layout;
    this.network = network;
    this.#water = propertiesAt(spec.temperature);
    this.#applied = { speed: 1, loading: 1, bypass: 0, temperature: spec.temperature, wear: AS_DRAWN };
    this.places = placesOf(layout, network);
    this.#openings = layout.parts.map(() => 1);
  }

  /** The water as of the last state. */
  get water(): WaterProperties {
    return this.#water;
  }

  /** Index of the bypass valve's link, −1 where there is none. */
  get bypassLink(): number {
    return this.places.bypass;
  }

  /** Puts the pad into a state and solves it from the last solution. */
  solve(state: PadState): SolveReport {
    return this.#solve(state, 0);
  }

  /**
   * The same with a given flow (m3/s) through the bypass, whatever valve that would take; the state's own opening
   * counts for nothing. Heater flow falls almost in proportion to this flow, so that a limit is found in few solves.
   */
  solveAtBypassFlow(state: PadState, flow: number): SolveReport {
    return this.#solve({ ...state, bypass: 0 }, flow);
  }

  /** Flow of a heater by its place in the bank, as of the last solution, m3/s. */
  heaterFlow(heater: number): number {
    const place = this.places.heaters[heater];
    return place === undefined ? Number.NaN : this.network.flow(place.link);
  }

  #solve(state: PadState, bypassFlow: number): SolveReport {
    const issues = stateIssues(state);
    if (issues.length > 0) return { ok: false, issues };
    const refused = this.#apply(state);
    if (refused.length > 0) return { ok: false, issues: refused };
    if (this.places.ports.every((link) => (this.#openings[link] ?? 0) < SHUT))
      return { ok: false, issues: [{ code: 'no-solution', where: 'pad', reason: 'all-valves-shut' }] };
    this.#drawBypass(bypassFlow);
    return this.network.solve();
  }

  /** Takes a flow from the water before the heaters and gives it back after them. */
  #drawBypass(flow: number): void {
    if (flow === this.#bypassFlow) return;
    this.#bypassFlow = flow;
    const { split, merge } = this.places.station;
    this.network.setDemand(split, flow);
    this.network.setDemand(merge, -flow);
  }

  #apply(state: PadState): Issue[] {
    const before = this.#applied;
    const next: Applied = {
      speed: state.speed < STANDSTILL ? 0 : state.speed,
      loading: state.loading ?? 1,
      bypass: state.bypass ?? 0,
      temperature: state.temperature ?? this.spec.temperature,
      wear: state.wear === undefined ? AS_DRAWN : { ...AS_DRAWN, ...state.wear },
    };
    if (next.temperature !== before.temperature) this.#water = propertiesAt(next.temperature);
    this.#applied = next;
    const issues: Issue[] = [];
    const { parts } = this.layout;
    for (let link = 0; link < parts.length; link += 1) {
      const part = parts[link]!;
      if (part.part === 'port') this.#setPort(link, part, state);
      else if (this.#stale(part, before, next))
        issues.push(...this.network.setLaw(link, this.#law(part, link, next)));
    }
    if (next.bypass !== before.bypass) this.#setBypass(next.bypass);
    this.network.setClosed(this.places.stopped, next.speed > 0);
    return issues;
  }

  #stale(part: LinkPart, before: Applied, next: Applied): boolean {
    switch (part.part) {
      case 'pump':
        return !part.stopped && (next.speed !== before.speed || next.wear.pump !== before.wear.pump);
      case 'filter':
        return next.loading !== before.loading;
      case 'heater':
        return next.wear.heater !== before.wear.heater;
      case 'item':
        return (
          factorOf(part.side, next.wear) !== factorOf(part.side, before.wear) ||
          (next.temperature !== before.temperature && part.item.type === 'pipe')
        );
      default:
        return false;
    }
  }

  #law(part: LinkPart, link: number, now: Applied): LinkLaw {
    const { pump, filter, bank } = this.spec;
    switch (part.part) {
      case 'pump':
        return { type: 'pump', curve: worn(pump.curve, now.wear.pump), speed: now.speed };
      case 'filter':
        return lossLink(filter.clean, now.loading);
      case 'heater':
        return lossLink(bank?.heaters[part.heater]?.loss ?? filter.clean, now.wear.heater);
      case 'item':
        return itemLaw(part.item, this.#water.viscosity, factorOf(part.side, now.wear));
      default:
        return this.network.law(link);
    }
  }

  #setPort(link: number, part: Extract<LinkPart, { part: 'port' }>, state: PadState): void {
    const inward = part.side === 'suction';
    const branches = inward ? this.spec.suctions : this.spec.returns;
    const opening = openingOf(branches, part.basin, inward ? state.from : state.to);
    if (opening === this.#openings[link]) return;
    this.#openings[link] = opening;
    const branch = branches.find((one) => one.basin === part.basin);
    const shut = opening < SHUT || branch === undefined;
    if (!shut) this.network.setLaw(link, portLaw(branch, opening));
    this.network.setClosed(link, shut);
  }

  #setBypass(opening: number): void {
    const valve = this.spec.bypass?.valve;
    const link = this.places.bypass;
    if (valve === undefined || link < 0) return;
    const shut = opening < SHUT;
    const r = shut ? 0 : valveResistance(passing(valve, opening));
    if (!shut) this.network.setLaw(link, { type: 'power', r, n: 2 });
    this.network.setClosed(link, shut);
  }
}

/** Opening of a branch: as named, else shut; where nothing is named the first branch stands open. */
export function openingOf(
  branches: readonly BasinBranch[],
  basin: string,
  openings?: PadState['from'],
): number {
  if (openings === undefined) return branches[0]?.basin === basin ? 1 : 0;
  return openings[basin] ?? 0;
}

/** Factor of a state's wear on the links of a side. */
export function factorOf(side: Side, wear: Required<PadWear>): number {
  if (side === 'suction') return wear.suction;
  return side === 'returns' ? wear.returns : 1;
}

function worn(curve: PadSpec['pump']['curve'], factor: number): PadSpec['pump']['curve'] {
  if (factor === 1) return curve;
  if (curve.shape === 'power') return { ...curve, a: curve.a * factor, b: curve.b * factor };
  return { ...curve, heads: curve.heads.map((head) => head * factor) };
}
