/**
 * A propane tank under a steady draw: how cold its liquid gets, what pressure is left, and whether that is enough
 * for the first regulator.
 *
 * Source: `wetted-shell.ts` and `vapour-pressure.ts`. Range: theirs; a liquid under 190 K is beyond the vapour curve.
 * Errors: `no-solution` with reason `tank-pressure-too-low`, found and least gauge pressure beside it, when the tank
 * cannot hold the pressure its regulator needs; range issues otherwise.
 *
 * Worked example: 37 in by 120 in, half full, 0 °F, no draw → 0 °F, 23.6 psi gauge at sea level.
 */
import { evaluate, fail, ok, type Recorder, type Result } from '../../trace/index.ts';
import { propaneVapourPressure } from './vapour-pressure.ts';
import { liquidUnderDraw, SHELL_TRANSMITTANCE, type TankShell, wettedArea } from './wetted-shell.ts';

export interface TankUnderDraw extends TankShell {
  /** K. */
  readonly airTemperature: number;
  /** Fuel drawn, W of gross heat. */
  readonly heatInput: number;
  /** Barometer, Pa. */
  readonly atmosphere: number;
  /** Least gauge pressure that the first regulator works from, Pa. */
  readonly leastPressure: number;
  /** W/(m2 K); `SHELL_TRANSMITTANCE` unless given. */
  readonly transmittance?: number;
}

export interface TankState {
  /** K. */
  readonly liquidTemperature: number;
  /** Gauge, Pa. */
  readonly pressure: number;
}

/** Liquid temperature and tank pressure under a draw. */
export function tankUnderDraw(tank: TankUnderDraw, recorder?: Recorder): Result<TankState> {
  const { diameter, length, fill, airTemperature, heatInput } = tank;
  const area = evaluate(wettedArea, { diameter, length, fill }, recorder);
  if (!area.ok) return area;
  const transmittance = tank.transmittance ?? SHELL_TRANSMITTANCE;
  const draw = { area: area.value, transmittance, airTemperature, heatInput };
  const liquid = evaluate(liquidUnderDraw, draw, recorder);
  if (!liquid.ok) return liquid;
  const vapour = evaluate(propaneVapourPressure, { temperature: liquid.value }, recorder);
  const pressure = vapour.ok ? vapour.value - tank.atmosphere : Number.NEGATIVE_INFINITY;
  // A liquid too cold for the vapour curve has no pressure to speak of.
  const tooCold = !vapour.ok && liquid.value < propaneVapourPressure.inputs.temperature.min!;
  if (!vapour.ok && !tooCold) return vapour;
  if (pressure >= tank.leastPressure) return ok({ liquidTemperature: liquid.value, pressure });
  return fail({
    code: 'no-solution',
    where: 'tank',
    reason: 'tank-pressure-too-low',
    ...(Number.isFinite(pressure) ? { found: pressure } : {}),
    min: tank.leastPressure,
    kind: 'pressure',
  });
}
