/**
 * What carries the gas in the code's eyes: a pipe with a bore, by the sizing equations, or corrugated tubing, by its
 * table. Gives the capacity and the drop of one run, choosing the equation that the inlet pressure asks for.
 *
 * Source: IFGC 2018 Section 402.4 (low-pressure equation under 1.5 psi gauge at the inlet, high-pressure from there).
 * Range: that of the equation used. The outlet must not fall below the atmosphere.
 * Errors: range issues; `contradiction` where the outlet would stand below the atmosphere; `ill-formed` for a size
 * that the table of corrugated tubing does not have.
 *
 * Worked example: 3/4 in Schedule 40, 60 ft, 8 in w.c. in, 0.5 in w.c. drop, natural gas → 137 ft3/h.
 */
import { evaluate, fail, type Issue, ok, type Recorder, type Result } from '../../trace/index.ts';
import type { Fuel } from '../fuel.ts';
import {
  type CorrugatedSize,
  type CorrugatedTable,
  corrugatedDrop,
  corrugatedFlow,
  corrugatedLength,
  corrugatedTableLength,
} from './corrugated.ts';
import { codeFactors } from './factors.ts';
import { HIGH_PRESSURE_FROM, highPressureDrop, highPressureFlow } from './high-pressure.ts';
import { lowPressureDrop, lowPressureFlow } from './low-pressure.ts';

export interface BoreCarrier {
  readonly type: 'bore';
  /** m. */
  readonly insideDiameter: number;
}

export interface CorrugatedCarrier {
  readonly type: 'corrugated';
  readonly ehd: number;
  readonly table: CorrugatedTable;
}

export type Carrier = BoreCarrier | CorrugatedCarrier;

export type CodeEquation = 'low' | 'high';

/** The equation the code asks for at a gauge inlet pressure (Pa). */
export function codeEquation(inletPressure: number): CodeEquation {
  return inletPressure < HIGH_PRESSURE_FROM ? 'low' : 'high';
}

export interface CarrierRun {
  readonly carrier: Carrier;
  /** m, equivalent lengths of fittings included. */
  readonly length: number;
  /** Gauge pressure at the inlet, Pa. */
  readonly inletPressure: number;
  readonly fuel: Fuel;
}

/** Capacity (standard m3/s) of a run within a drop (Pa). */
export function carrierCapacity(
  run: CarrierRun & { readonly pressureDrop: number },
  recorder?: Recorder,
): Result<number> {
  if (run.pressureDrop > run.inletPressure) return fail(belowAtmosphere('pressureDrop', run.pressureDrop));
  const { carrier, length, inletPressure, pressureDrop } = run;
  if (carrier.type === 'corrugated') return corrugatedCapacity({ ...run, carrier }, recorder);
  const { cr, y } = codeFactors(run.fuel);
  const common = { insideDiameter: carrier.insideDiameter, length, pressureDrop, cr };
  if (codeEquation(inletPressure) === 'low') return evaluate(lowPressureFlow, common, recorder);
  return evaluate(highPressureFlow, { ...common, inletPressure, y }, recorder);
}

/** Drop (Pa) of a run at a flow (standard m3/s). */
export function carrierDrop(
  run: CarrierRun & { readonly flow: number },
  recorder?: Recorder,
): Result<number> {
  const found = dropOf(run, recorder);
  if (found.ok && found.value > run.inletPressure) return fail(belowAtmosphere('flow', run.flow));
  return found;
}

function dropOf(run: CarrierRun & { readonly flow: number }, recorder?: Recorder): Result<number> {
  const { carrier, length, inletPressure, flow } = run;
  if (flow === 0) return ok(0);
  if (carrier.type === 'corrugated') return corrugatedLoss({ ...run, carrier }, recorder);
  const { cr, y } = codeFactors(run.fuel);
  const common = { insideDiameter: carrier.insideDiameter, length, flow, cr };
  if (codeEquation(inletPressure) === 'low') return evaluate(lowPressureDrop, common, recorder);
  return evaluate(highPressureDrop, { ...common, inletPressure, y }, recorder);
}

function belowAtmosphere(where: string, found: number): Issue {
  return { code: 'contradiction', where, found, reason: 'outlet-below-atmosphere' };
}

type CorrugatedCall = CarrierRun & { readonly carrier: CorrugatedCarrier };

function corrugatedCapacity(
  run: CorrugatedCall & { readonly pressureDrop: number },
  recorder?: Recorder,
): Result<number> {
  const { table } = run.carrier;
  const size = sizeOf(run.carrier);
  if (!size.ok) return size;
  const tableLength = evaluate(
    corrugatedTableLength,
    {
      length: run.length,
      inletPressure: run.inletPressure,
      pressureDrop: run.pressureDrop,
      tableInletPressure: table.inletPressure,
      tableDrop: table.pressureDrop,
    },
    recorder,
  );
  if (!tableLength.ok) return tableLength;
  const upper = table.lengths.findIndex((one) => one >= tableLength.value);
  const pair = rowsAt(run, size.value, upper === -1 ? table.lengths.length - 1 : upper);
  return evaluate(corrugatedFlow, { tableLength: tableLength.value, ...pair }, recorder);
}

function corrugatedLoss(
  run: CorrugatedCall & { readonly flow: number },
  recorder?: Recorder,
): Result<number> {
  const { table } = run.carrier;
  const size = sizeOf(run.carrier);
  if (!size.ok) return size;
  const atTable = run.flow * Math.sqrt(run.fuel.specificGravity / table.specificGravity);
  const upper = size.value.flows.findIndex((one) => one <= atTable);
  const pair = rowsAt(run, size.value, upper === -1 ? table.lengths.length - 1 : upper);
  const tableLength = evaluate(corrugatedLength, { flow: run.flow, ...pair }, recorder);
  if (!tableLength.ok) return tableLength;
  return evaluate(
    corrugatedDrop,
    {
      length: run.length,
      inletPressure: run.inletPressure,
      tableLength: tableLength.value,
      tableInletPressure: table.inletPressure,
      tableDrop: table.pressureDrop,
    },
    recorder,
  );
}

function sizeOf(carrier: CorrugatedCarrier): Result<CorrugatedSize> {
  const size = carrier.table.sizes.find((one) => one.ehd === carrier.ehd);
  if (size !== undefined) return ok(size);
  const expected = carrier.table.sizes.map((one) => String(one.ehd));
  return fail({ code: 'ill-formed', where: 'ehd', found: carrier.ehd, reason: 'no-such-size', expected });
}

/** The two neighbouring rows whose upper one has the given index, kept inside the table. */
function rowsAt(run: CorrugatedCall, size: CorrugatedSize, upper: number) {
  const { table } = run.carrier;
  const above = Math.max(1, upper);
  return {
    lengthBelow: table.lengths[above - 1] ?? Number.NaN,
    lengthAbove: table.lengths[above] ?? Number.NaN,
    flowBelow: size.flows[above - 1] ?? Number.NaN,
    flowAbove: size.flows[above] ?? Number.NaN,
    specificGravity: run.fuel.specificGravity,
    tableGravity: table.specificGravity,
  };
}
