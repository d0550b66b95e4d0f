/**
 * The pump in a solved pad: its power and the suction head it has.
 *
 * Source: `hydraulicPower`, `drivePower`, `npshAvailable`. Errors: their issues.
 *
 * Worked example: 60 gpm at 45 ft and 35 % from wire to water → 509 W of water power, 1.45 kW at the wire.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import { evaluate, ok, type Recorder, type Result } from '../../trace/index.ts';
import { npshAvailable } from '../pump/npsh.ts';
import { drivePower, hydraulicPower } from '../pump/power.ts';
import type { Pad } from './pad.ts';
import type { PadSolution } from './solution.ts';

export interface PadPumpDuty {
  /** Gained by the water, W. */
  readonly hydraulic: number;
  /** Taken from the wire, W, where the efficiency is known. */
  readonly wire?: number;
  /** NPSH available, m. */
  readonly npsh: number;
}

/** Power and suction head of the pump in a solution. */
export function padPump(pad: Pad, solution: PadSolution, recorder?: Recorder): Result<PadPumpDuty> {
  const { pump, airPressure } = pad.spec;
  const { density, vapourPressure } = solution.water;
  const duty = { flow: Math.max(solution.flow, 0), head: Math.max(solution.pumpHead, 0), density };
  const hydraulic = evaluate(hydraulicPower, duty, recorder);
  if (!hydraulic.ok) return hydraulic;
  const suction = solution.pumpInletPressure / (density * STANDARD_GRAVITY);
  const npsh = evaluate(
    npshAvailable,
    { surfacePressure: airPressure, vapourPressure, density, lift: -suction, suctionLoss: 0 },
    recorder,
  );
  if (!npsh.ok) return npsh;
  if (pump.efficiency === undefined) return ok({ hydraulic: hydraulic.value, npsh: npsh.value });
  const wire = evaluate(drivePower, { ...duty, efficiency: pump.efficiency }, recorder);
  return wire.ok ? ok({ hydraulic: hydraulic.value, wire: wire.value, npsh: npsh.value }) : wire;
}
