/** What a solved case says: gauge pressures at the junctions, flows in the links, and what the loads get. */
import type { LinkState } from '../../numerics/index.ts';
import type { GasLayout } from './gas-layout.ts';

export interface SolvedCase {
  /** Gauge, Pa, by junction. */
  readonly pressures: Float64Array;
  /** Standard m3/s, positive from → to, by link. */
  readonly flows: Float64Array;
  /** Standard m3/s each load would take, and takes. */
  readonly wanted: Float64Array;
  readonly taken: Float64Array;
  readonly states: readonly LinkState[];
}

/** A shortfall smaller than this share of what a load wants is rounding. */
const SHORTFALL = 1e-3;

/** A solved case; a junction, link or load that the system does not have is the caller's bug and throws. */
export class GasSolution {
  readonly layout: GasLayout;
  readonly pressures: Float64Array;
  readonly flows: Float64Array;
  readonly #solved: SolvedCase;

  constructor(layout: GasLayout, solved: SolvedCase) {
    this.layout = layout;
    this.pressures = solved.pressures;
    this.flows = solved.flows;
    this.#solved = solved;
  }

  /** Gauge pressure at a junction, Pa. */
  pressure(node: string): number {
    return this.pressures[this.layout.node(node)]!;
  }

  /** Gauge pressure at a load's inlet, Pa. */
  pressureAtLoad(load: string): number {
    const { loads } = this.layout.spec;
    return this.pressure(loads[index(loads, load)]!.node);
  }

  /** Flow in a link, standard m3/s, positive from → to. */
  flow(link: string): number {
    return this.flows[index(this.layout.spec.links, link)]!;
  }

  /** Gauge pressure lost from a link's `from` end to its `to` end, Pa; negative where height or a reversed flow adds. */
  drop(link: string): number {
    const { links } = this.layout.spec;
    const { from, to } = links[index(links, link)]!;
    return this.pressure(from) - this.pressure(to);
  }

  /** What a load gets, standard m3/s. */
  taken(load: string): number {
    return this.#solved.taken[index(this.layout.spec.loads, load)]!;
  }

  /** `holding`: in charge of its outlet; `open`: wide open, too little before it; `blocked`: locked up. */
  regulator(link: string): LinkState {
    return this.#solved.states[index(this.layout.spec.links, link)]!;
  }

  /** Loads that get less than they want. */
  get starved(): readonly string[] {
    const { wanted, taken } = this.#solved;
    return this.layout.spec.loads
      .filter((_, i) => taken[i]! < wanted[i]! * (1 - SHORTFALL))
      .map((load) => load.id);
  }
}

function index(all: readonly { readonly id: string }[], id: string): number {
  const at = all.findIndex((one) => one.id === id);
  if (at < 0) throw new RangeError(`the gas system has no ${id}`);
  return at;
}
