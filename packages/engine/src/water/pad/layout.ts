/** Lays a pad out as a network: nodes, links, and what each link is, so that results and working can be read back. */
import type { LinkLaw, LinkSpec, NodeSpec } from '../../numerics/index.ts';
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import { lossLink } from '../loss/loss-law.ts';
import { stoppedPumpLoss } from '../pump/stopped.ts';
import { COEFFICIENT_DENSITY } from '../valve/flow-coefficient.ts';
import { itemLaw, type Line, type LineItem } from './line.ts';
import type { BasinBranch, HeaterBank, PadHeater, PadSpec } from './spec.ts';

/** Which factor of the state acts on a link. */
export type Side = 'suction' | 'discharge' | 'filter' | 'heater' | 'bypass' | 'returns';

export type LinkPart =
  | { readonly part: 'item'; readonly item: LineItem; readonly side: Side }
  | { readonly part: 'port'; readonly basin: string; readonly side: 'suction' | 'returns' }
  /** `stopped`: the way through its standing impeller, open when it does not run. */
  | { readonly part: 'pump'; readonly stopped: boolean }
  | { readonly part: 'filter' }
  | { readonly part: 'heater'; readonly heater: number }
  | { readonly part: 'bypass-valve' };

/** Names of the points of the water's way that every pad has. */
export const STATIONS = [
  'suction',
  'pump-inlet',
  'pump-outlet',
  'filter-inlet',
  'filter-outlet',
  'split',
  'merge',
  'return',
] as const;
export type Station = (typeof STATIONS)[number];

export interface Layout {
  readonly nodes: readonly NodeSpec[];
  readonly links: readonly LinkSpec[];
  /** One for each link, in order. */
  readonly parts: readonly LinkPart[];
  /** Node id of a station: an empty line joins two stations in one node. */
  readonly stationNode: Readonly<Record<Station, string>>;
  readonly heaterNodes: readonly { readonly inlet: string; readonly outlet: string; readonly link: number }[];
}

/** Resistance r of h = r·Q² of a valve passing a coefficient. */
export function valveResistance(coefficient: number): number {
  return 1 / (COEFFICIENT_DENSITY * STANDARD_GRAVITY * coefficient * coefficient);
}

/** Coefficient of a valve that passes a flow at a loss of head: the inverse. */
export function valveCoefficient(flow: number, head: number): number {
  return flow / Math.sqrt(COEFFICIENT_DENSITY * STANDARD_GRAVITY * head);
}

/** Loss of a branch that has no port of its own: next to nothing, m over (m3/s)². */
const NO_PORT = 1e-3;

/** Law of a branch's port at an opening above 0: its flow coefficient is in proportion to the opening. */
export function portLaw(branch: BasinBranch, opening: number): LinkLaw {
  if (branch.port === undefined) return { type: 'power', r: NO_PORT, n: 2 };
  return lossLink({ type: 'k', ...branch.port }, 1 / (opening * opening));
}

/** The layout of a checked specification, with the bypass shut and clean. */
export function layOut(spec: PadSpec, viscosity: number): Layout {
  return new Draughtsman(spec, viscosity).draw();
}

interface Chain {
  readonly name: string;
  readonly from: string;
  readonly line: Line;
  readonly side: Side;
  /** Node the chain must end in; absent: it ends where it ends. */
  readonly to?: string;
}

class Draughtsman {
  readonly #spec: PadSpec;
  readonly #viscosity: number;
  readonly #nodes = new Map<string, NodeSpec>();
  readonly #links: LinkSpec[] = [];
  readonly #parts: LinkPart[] = [];
  readonly #heaterNodes: { inlet: string; outlet: string; link: number }[] = [];

  constructor(spec: PadSpec, viscosity: number) {
    this.#spec = spec;
    this.#viscosity = viscosity;
  }

  draw(): Layout {
    const spec = this.#spec;
    for (const basin of spec.basins) this.#node(basinNode(basin.id), basin.level);
    for (const branch of spec.suctions) this.#branch(branch, 'suction');
    const pumpInlet = this.#chain({ name: 'suction', from: 'suction', line: spec.suction, side: 'suction' });
    this.#pump(pumpInlet);
    const filterInlet = this.#chain({
      name: 'discharge',
      from: 'pump',
      line: spec.discharge,
      side: 'discharge',
    });
    this.#link(
      { id: 'filter', from: filterInlet, to: 'filter', law: lossLink(spec.filter.clean, 1) },
      { part: 'filter' },
    );
    const split = this.#chain({ name: 'approach', from: 'filter', line: spec.approach, side: 'discharge' });
    const merge = spec.bank === undefined ? split : 'merge';
    if (spec.bank) this.#bank(spec.bank, split, merge);
    const last = this.#chain({ name: 'departure', from: merge, line: spec.departure, side: 'returns' });
    for (const branch of spec.returns) this.#branch(branch, 'returns', last);
    const stationNode = {
      suction: 'suction',
      'pump-inlet': pumpInlet,
      'pump-outlet': 'pump',
      'filter-inlet': filterInlet,
      'filter-outlet': 'filter',
      split,
      merge,
      return: last,
    };
    return {
      nodes: [...this.#nodes.values()],
      links: this.#links,
      parts: this.#parts,
      stationNode,
      heaterNodes: this.#heaterNodes,
    };
  }

  #pump(from: string): void {
    const { curve } = this.#spec.pump;
    const running = { type: 'pump', curve, speed: 1 } as const;
    this.#link({ id: 'pump', from, to: 'pump', law: running }, { part: 'pump', stopped: false });
    const standing = lossLink(stoppedPumpLoss(curve), 1);
    this.#link(
      { id: 'pump.stopped', from, to: 'pump', law: standing, closed: true },
      { part: 'pump', stopped: true },
    );
  }

  /** Basin, line, port, manifold on the suction side; manifold, port, line, basin on the other. */
  #branch(branch: BasinBranch, side: 'suction' | 'returns', manifold = 'suction'): void {
    const name = `${side}.${branch.basin}`;
    const basin = basinNode(branch.basin);
    const inward = side === 'suction';
    const oneWay = branch.oneWay ? { oneWay: true } : {};
    const law = portLaw(branch, 1);
    const before = inward ? this.#chain({ name, from: basin, line: branch.line, side }) : manifold;
    const after = inward ? manifold : branch.line.length > 0 ? `${name}.port` : basin;
    this.#link(
      { id: `${name}.port`, from: before, to: after, law, ...oneWay },
      { part: 'port', basin: branch.basin, side },
    );
    if (!inward) this.#chain({ name, from: after, line: branch.line, side, to: basin });
  }

  #bank(bank: HeaterBank, split: string, merge: string): void {
    const count = bank.heaters.length;
    const supply = [split];
    for (let i = 1; i < count; i++) {
      const line = bank.supplyHeader[i - 1] as Line;
      supply.push(
        this.#chain({ name: `supply-header.${i}`, from: supply[i - 1] as string, line, side: 'heater' }),
      );
    }
    const back = Array.from({ length: count }, (_, i) => `return-header.${i}`);
    back[bank.arrangement === 'direct' ? 0 : count - 1] = merge;
    for (let i = 1; i < count; i++) {
      const line = bank.returnHeader[i - 1] as Line;
      const [near, far] = [back[i - 1] as string, back[i] as string];
      const [from, to] = bank.arrangement === 'direct' ? [far, near] : [near, far];
      this.#chain({ name: `return-header.${i}`, from, to, line, side: 'heater' });
    }
    bank.heaters.forEach((heater, i) => {
      this.#heater(heater, i, supply[i] as string, back[i] as string);
    });
    if (this.#spec.bypass) this.#bypass(split, merge);
  }

  #heater(heater: PadHeater, index: number, from: string, to: string): void {
    const name = `heater.${heater.id}`;
    const inlet = this.#chain({ name: `${name}.inlet`, from, line: heater.inlet, side: 'heater' });
    const outlet = heater.outlet.length > 0 ? `${name}.outlet` : to;
    this.#heaterNodes.push({ inlet, outlet, link: this.#links.length });
    this.#link(
      { id: name, from: inlet, to: outlet, law: lossLink(heater.loss, 1) },
      { part: 'heater', heater: index },
    );
    this.#chain({ name: `${name}.outlet`, from: outlet, line: heater.outlet, side: 'heater', to });
  }

  #bypass(split: string, merge: string): void {
    const line = this.#spec.bypass?.line ?? [];
    const after = line.length > 0 ? 'bypass' : merge;
    const law = { type: 'power', r: 1, n: 2 } as const;
    this.#link({ id: 'bypass-valve', from: split, to: after, law, closed: true }, { part: 'bypass-valve' });
    this.#chain({ name: 'bypass', from: after, line, side: 'bypass', to: merge });
  }

  /** Links of a line one after another; the node it ends in. */
  #chain({ name, from, line, side, to }: Chain): string {
    let at = from;
    this.#node(from);
    line.forEach((item, i) => {
      const next = i === line.length - 1 && to !== undefined ? to : `${name}:${i}`;
      const oneWay = item.type === 'device' && item.oneWay === true ? { oneWay: true } : {};
      const law = itemLaw(item, this.#viscosity, 1);
      this.#link({ id: `${name}.${i}`, from: at, to: next, law, ...oneWay }, { part: 'item', item, side });
      at = next;
    });
    return at;
  }

  #link(link: LinkSpec, part: LinkPart): void {
    this.#node(link.from);
    this.#node(link.to);
    this.#links.push(link);
    this.#parts.push(part);
  }

  #node(id: string, level?: number): void {
    if (this.#nodes.has(id)) return;
    this.#nodes.set(id, level === undefined ? { id } : { id, fixed: level });
  }
}

function basinNode(id: string): string {
  return `basin.${id}`;
}
