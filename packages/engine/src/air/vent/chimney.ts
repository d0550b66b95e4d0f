/**
 * Greatest heat input that a natural-draught vent carries away, from the chimney relation of the handbook: the draught
 * of the column is spent on the losses of the way, and the column is the warmer the more flows.
 *
 *     w = ventFlow(draught(columnTemperature(w)))        I = w/M
 *
 * Solved from the flow of an uncooled column downwards: each round flows less and cools more, so the rounds fall to
 * the greatest flow that sustains itself. Convergence: to 1e-9 of the flow, at most 400 rounds.
 *
 * How it stands against the code’s tables is in docs/validation.md: about a tenth above them for draught-hood burners
 * and a sixth for fan-assisted ones, since the tables also keep the vent dry and the burner’s outlet below room
 * pressure. Where a table reaches, the table counts.
 *
 * Source: ASHRAE Handbook – HVAC Systems and Equipment, chimneys, from memory.
 * Range: as the formulas declare. Errors: their range issues; `no-solution` where the vent cools the gas so far that
 * no flow sustains itself; `not-converged`.
 * Worked example: 5 in type B, 10 ft straight up, draught hood, sea level → 51 kW (175,000 Btu/h; the table 166,000).
 */

import type { Formula } from '../../trace/index.ts';
import { evaluate, fail, ok, type Recorder, type Result, traced } from '../../trace/index.ts';
import { columnTemperature, ventCooling } from './column.ts';
import { draught } from './draught.ts';
import { FLUE_GAS_SOURCE } from './flue-gas.ts';
import { ventFlow, ventLoss } from './vent-flow.ts';

export interface Chimney {
  /** m. */
  readonly diameter: number;
  /** From the burner’s outlet to the terminal, m. */
  readonly height: number;
  /** Horizontal part, m. */
  readonly lateral: number;
  /** Elbows over 45 to 90°. */
  readonly elbows: number;
  /** Of the upright part, W/(m2 K). */
  readonly transmittance: number;
  /** Of the lateral, W/(m2 K). */
  readonly connectorTransmittance: number;
  /** Of the way into the vent. */
  readonly inletLoss: number;
  /** Gas over air where it enters, K. */
  readonly rise: number;
  /** Flue gas for each joule, kg/J. */
  readonly massPerHeat: number;
  /** Outdoors, K. */
  readonly airTemperature: number;
  /** Absolute, Pa. */
  readonly atmosphere: number;
}

const MOST_ROUNDS = 400;
const TOLERANCE = 1e-9;
/** Below this share of the uncooled flow nothing sustains itself. */
const DEAD = 1e-4;

export interface CarriedGas {
  /** w, kg/s. */
  readonly massFlow: number;
  /** M, kg/J. */
  readonly massPerHeat: number;
}

/** Heat input whose flue gas is this flow, W. */
export const ventHeatInput: Formula<CarriedGas> = {
  id: 'air.vent-heat-input',
  equation: 'I = w/M',
  inputs: {
    massFlow: { symbol: 'w', kind: 'mass-flow', min: 0, max: 100 },
    massPerHeat: { symbol: 'M', kind: 'emission-factor', min: 1e-8, max: 1e-5 },
  },
  result: { symbol: 'I', kind: 'heat-rate' },
  source: FLUE_GAS_SOURCE,
  kernel: (x) => x.massFlow / x.massPerHeat,
};

/** Greatest heat input, W; see the head of this file. */
export function chimneyCapacity(chimney: Chimney, recorder?: Recorder): Result<number> {
  const { diameter, height, lateral } = chimney;
  const shape = { inletLoss: chimney.inletLoss, elbows: chimney.elbows, length: height + lateral, diameter };
  const loss = evaluate(ventLoss, shape, recorder);
  if (!loss.ok) return loss;
  const first = evaluate(ventFlow, drivenBy(chimney, loss.value, chimney.airTemperature + chimney.rise));
  if (!first.ok) return first;
  const flow = sustainedFlow(chimney, loss.value, first.value);
  if (!flow.ok) return flow;
  if (recorder !== undefined) flowOnce(chimney, { loss: loss.value, massFlow: flow.value }, recorder);
  return evaluate(ventHeatInput, { massFlow: flow.value, massPerHeat: chimney.massPerHeat }, recorder);
}

function sustainedFlow(chimney: Chimney, loss: number, uncooled: number): Result<number> {
  let massFlow = uncooled;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = flowOnce(chimney, { loss, massFlow });
    if (next < DEAD * uncooled)
      return fail({
        code: 'no-solution',
        where: 'chimney',
        reason: 'vent-too-cool',
        found: next,
        kind: 'mass-flow',
      });
    if (Math.abs(next - massFlow) <= TOLERANCE * massFlow) return ok(next);
    massFlow = next;
  }
  return fail({ code: 'not-converged', where: 'chimney', found: massFlow, kind: 'mass-flow' });
}

interface Round {
  readonly loss: number;
  readonly massFlow: number;
}

/** The flow that the column of this flow drives. */
function flowOnce(chimney: Chimney, { loss, massFlow }: Round, recorder?: Recorder): number {
  const { diameter, airTemperature, rise } = chimney;
  const cooling = (transmittance: number, length: number): number =>
    traced(ventCooling, { transmittance, diameter, length, massFlow }, recorder);
  const lateralCooling = cooling(chimney.connectorTransmittance, chimney.lateral);
  const uprightCooling = cooling(chimney.transmittance, chimney.height);
  const column = { airTemperature, rise, lateralCooling, uprightCooling };
  const gasTemperature = traced(columnTemperature, column, recorder);
  const driven = drivenBy(chimney, loss, gasTemperature, recorder);
  return traced(ventFlow, driven, recorder);
}

function drivenBy(chimney: Chimney, lossCoefficient: number, gasTemperature: number, recorder?: Recorder) {
  const { diameter, height, airTemperature, atmosphere } = chimney;
  const column = { height, gasTemperature, airTemperature, atmosphere };
  return {
    draught: traced(draught, column, recorder),
    diameter,
    lossCoefficient,
    gasTemperature,
    atmosphere,
  };
}
