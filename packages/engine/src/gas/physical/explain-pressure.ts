/**
 * The working of a pressure: along the gas's way from the supply to a junction, each link with its formula.
 *
 * The way is the one the gas takes: from the junction against the flow, by the link that brings most; where nothing
 * flows, by the first link that leads to the supply. Each formula starts from the solved pressure before it, so that
 * the working shows the solution and is no second one.
 *
 * Records one group `gas.link` a link, with the gauge pressure at its end. Range and errors: those of the solution.
 */
import { type Recorder, traced } from '../../trace/index.ts';
import { corrugatedFit, corrugatedOutlet, referenceFlow } from './corrugated-law.ts';
import type { GasSolution } from './gas-solution.ts';
import { gaugeReading, meterOutlet, regulatorOutlet, wideOpenOutlet } from './outlet-formulas.ts';
import { pipeOutlet } from './pipe-law.ts';
import type { GasLink, GasMeter, GasPipe, GasRegulator } from './system-spec.ts';

interface Leg {
  readonly link: GasLink;
  /** Whether the way goes from the link's `from` to its `to`. */
  readonly forward: boolean;
}

/** Records how the gauge pressure at a junction comes about. */
export function explainPressure(solution: GasSolution, node: string, recorder: Recorder): void {
  const { supply } = solution.layout.spec;
  recorder.given({ id: 'gas.supply-pressure', value: supply.pressure, kind: 'pressure' });
  for (const leg of wayTo(solution, node)) {
    const end = leg.forward ? leg.link.to : leg.link.from;
    recorder.open();
    new LegWorking(solution, leg, recorder).record();
    const value = solution.pressure(end);
    recorder.closeGroup({ id: 'gas.link', value, kind: 'pressure', about: { link: leg.link.id, node: end } });
  }
}

/** Links from the supply to a junction, in order. */
function wayTo(solution: GasSolution, node: string): Leg[] {
  const { links, supply } = solution.layout.spec;
  const way: Leg[] = [];
  const seen = new Set([node]);
  const search = (at: string): boolean => {
    if (at === supply.node) return true;
    const legs = links
      .flatMap((link): Leg[] => {
        if (link.closed) return [];
        return link.to === at
          ? [{ link, forward: true }]
          : link.from === at
            ? [{ link, forward: false }]
            : [];
      })
      .filter(({ link, forward }) => forward || link.type === 'pipe')
      .sort((a, b) => brings(solution, b) - brings(solution, a));
    for (const leg of legs) {
      const before = leg.forward ? leg.link.from : leg.link.to;
      if (seen.has(before)) continue;
      seen.add(before);
      if (search(before)) {
        way.push(leg);
        return true;
      }
    }
    return false;
  };
  search(node);
  return way;
}

function brings(solution: GasSolution, { link, forward }: Leg): number {
  return solution.flow(link.id) * (forward ? 1 : -1);
}

class LegWorking {
  readonly #solution: GasSolution;
  readonly #leg: Leg;
  readonly #recorder: Recorder;

  constructor(solution: GasSolution, leg: Leg, recorder: Recorder) {
    this.#solution = solution;
    this.#leg = leg;
    this.#recorder = recorder;
  }

  record(): void {
    const { link } = this.#leg;
    if (link.type === 'pipe') this.#pipe(link);
    else if (link.type === 'meter') this.#meter(link);
    else this.#regulator(link);
  }

  /** Flow along the way; a trickle against it is no flow. */
  get #flow(): number {
    return Math.max(brings(this.#solution, this.#leg), 0);
  }

  get #ends(): readonly [string, string] {
    const { link, forward } = this.#leg;
    return forward ? [link.from, link.to] : [link.to, link.from];
  }

  #absolute(node: string): number {
    const { layout } = this.#solution;
    return this.#solution.pressure(node) + (layout.outside[layout.node(node)] ?? Number.NaN);
  }

  #gauge(pressure: number): void {
    const { layout } = this.#solution;
    const { atmosphere, temperature } = layout.spec.ambient;
    const height = layout.heights[layout.node(this.#ends[1])] ?? Number.NaN;
    traced(gaugeReading, { pressure, atmosphere, height, temperature }, this.#recorder);
  }

  #pipe({ bore, length, fittings = 0, rise = 0 }: GasPipe): void {
    const { gas, spec } = this.#solution.layout;
    const run = {
      inletPressure: this.#absolute(this.#ends[0]),
      flow: this.#flow,
      rise: this.#leg.forward ? rise : -rise,
      temperature: gas.temperature,
    };
    if (bore.type === 'corrugated') {
      const fit = corrugatedFit(bore);
      if (!fit.ok) return;
      const { exponent } = fit.value;
      const tube = { length, specificGravity: spec.fuel.specificGravity, exponent };
      const q0 = referenceFlow(fit.value);
      this.#gauge(traced(corrugatedOutlet, { ...run, ...tube, referenceFlow: q0 }, this.#recorder));
      return;
    }
    const { insideDiameter, roughness } = bore;
    const body = { insideDiameter, roughness, length: length + fittings * insideDiameter };
    const { standardDensity, viscosity } = gas;
    this.#gauge(traced(pipeOutlet, { ...run, ...body, standardDensity, viscosity }, this.#recorder));
  }

  #meter({ badge, badgeDrop }: GasMeter): void {
    const { gas, spec } = this.#solution.layout;
    const run = {
      inletPressure: this.#absolute(this.#ends[0]),
      flow: this.#flow,
      badge,
      badgeDrop,
      specificGravity: spec.fuel.specificGravity,
      temperature: gas.temperature,
    };
    this.#gauge(traced(meterOutlet, run, this.#recorder));
  }

  #regulator(link: GasRegulator): void {
    const { setPressure, lockUpPressure, droop, capacity, wideOpenDrop } = link;
    const flow = this.#flow;
    if (this.#solution.regulator(link.id) !== 'open') {
      traced(regulatorOutlet, { setPressure, lockUpPressure, droop, capacity, flow }, this.#recorder);
      return;
    }
    const { layout } = this.#solution;
    const ratedOutlet = (layout.outside[layout.node(link.to)] ?? Number.NaN) + setPressure;
    const inletPressure = this.#absolute(link.from);
    this.#gauge(
      traced(wideOpenOutlet, { inletPressure, flow, capacity, wideOpenDrop, ratedOutlet }, this.#recorder),
    );
  }
}
