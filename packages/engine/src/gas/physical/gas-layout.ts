/**
 * What stays the same from case to case of a gas system: its junctions with their heights, and what turns a potential
 * into a gauge pressure and back.
 */
import type { NodeSpec } from '../../numerics/index.ts';
import type { RestLink } from './at-rest.ts';
import { elevationFactor } from './elevation.ts';
import { type GasState, gasState } from './gas-state.ts';
import type { LinkPlace } from './link-law.ts';
import { MANIFOLD_PRESSURE } from './load-law.ts';
import { outsidePressure } from './outlet-formulas.ts';
import type { GasLink, GasLoad, GasSystemSpec } from './system-spec.ts';

/** Junctions of a compiled system in the order they are met from the supply, and what each turns a potential into. */
export class GasLayout {
  readonly spec: GasSystemSpec;
  readonly gas: GasState;
  readonly nodeIds: readonly string[];
  /** m above the supply. */
  readonly heights: Float64Array;
  readonly factors: Float64Array;
  readonly outside: Float64Array;
  readonly #at: ReadonlyMap<string, number>;

  constructor(spec: GasSystemSpec, heights: ReadonlyMap<string, number>) {
    const { atmosphere, temperature } = spec.ambient;
    this.spec = spec;
    this.gas = gasState(spec.fuel, temperature);
    this.nodeIds = [...heights.keys()];
    this.heights = new Float64Array(heights.size);
    this.factors = new Float64Array(heights.size);
    this.outside = new Float64Array(heights.size);
    const at = new Map<string, number>();
    for (const id of this.nodeIds) {
      const i = at.size;
      const height = heights.get(id)!;
      at.set(id, i);
      this.heights[i] = height;
      this.factors[i] = elevationFactor(this.gas, height);
      this.outside[i] = outsidePressure(atmosphere, temperature, height);
    }
    this.#at = at;
  }

  node(id: string): number {
    const index = this.#at.get(id);
    if (index === undefined) throw new RangeError(`the gas system has no junction ${id}`);
    return index;
  }

  gauge(node: number, potential: number): number {
    return Math.sqrt(potential / this.factors[node]!) - this.outside[node]!;
  }

  potential(node: number, gauge: number): number {
    return this.factors[node]! * (this.outside[node]! + gauge) ** 2;
  }

  place({ from, to }: GasLink): LinkPlace {
    const { ambient, fuel } = this.spec;
    return {
      gas: this.gas,
      ambient,
      specificGravity: fuel.specificGravity,
      from: this.heights[this.node(from)]!,
      to: this.heights[this.node(to)]!,
    };
  }

  restLink(link: GasLink): RestLink {
    const [from, to] = [this.node(link.from), this.node(link.to)];
    const ends = { from, to, closed: link.closed ?? false };
    return link.type === 'regulator' ? { ...ends, lockUp: this.potential(to, link.lockUpPressure) } : ends;
  }

  get supplyPotential(): number {
    const { node, pressure } = this.spec.supply;
    return this.potential(this.node(node), pressure);
  }

  nodes(): NodeSpec[] {
    const { node } = this.spec.supply;
    const fixed = this.supplyPotential;
    return this.nodeIds.map((id) => (id === node ? { id, fixed } : { id }));
  }

  manifold(load: GasLoad): number {
    return load.manifoldPressure ?? MANIFOLD_PRESSURE[this.spec.fuel.name];
  }
}
