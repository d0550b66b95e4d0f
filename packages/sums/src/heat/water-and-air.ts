/** What the sums about a water surface are given, and the state of the surface that it makes. */
import { evaluate, fail, heat, type Issue, ok, properties, type Result } from '@firstfire/engine';
import { choice, number } from '../sum.ts';

export const SURFACE_INPUTS = {
  method: choice(['smith', 'ashrae', 'carrier', 'shah']),
  'water-temperature': number('temperature', 'degF'),
  'air-temperature': number('temperature', 'degF'),
  'relative-humidity': number('ratio', '%', { min: 0, max: 1 }),
  /** At the water, not at the station. Needed by smith and carrier. */
  'air-speed': number('velocity', 'mph', { optional: true }),
  /** The handbook's factor for ashrae (0.5 when left out), a multiple of the quiet rate for the others (1). */
  activity: number('ratio', '1', { optional: true }),
  altitude: number('length', 'ft', { optional: true, fallback: 0 }),
} as const;

export interface SurfaceGiven {
  readonly method: 'smith' | 'ashrae' | 'carrier' | 'shah';
  readonly 'water-temperature': number;
  readonly 'air-temperature': number;
  readonly 'relative-humidity': number;
  readonly 'air-speed': number | undefined;
  readonly activity: number | undefined;
  readonly altitude: number | undefined;
}

/** Air speed inside the constants of the indoor methods, m/s; convection beside them takes it. */
const INDOOR_AIR_SPEED = 0.1;

/** The state of the surface, or everything that is missing or out of range. */
export function surfaceState(x: SurfaceGiven): Result<heat.EvaporationState> {
  const traits = heat.EVAPORATION_TRAITS[x.method];
  const pressure = evaluate(properties.standardPressure, { altitude: x.altitude ?? 0 });
  const vapour = evaluate(properties.vapourPressure, {
    temperature: x['air-temperature'],
    relativeHumidity: x['relative-humidity'],
  });
  const speed = x['air-speed'] ?? INDOOR_AIR_SPEED;
  const missing: Issue[] =
    traits.usesAirSpeed && x['air-speed'] === undefined
      ? [{ code: 'ill-formed', where: 'air-speed', reason: 'needed-by-method' }]
      : [];
  const issues = [...missing, ...heat.airSpeedIssues(x.method, speed)];
  if (!pressure.ok) issues.push(...pressure.issues);
  if (!vapour.ok) issues.push(...vapour.issues);
  if (!pressure.ok || !vapour.ok || issues.length > 0) return fail(...issues);
  return ok({
    waterTemperature: x['water-temperature'],
    airTemperature: x['air-temperature'],
    vapourPressure: vapour.value,
    pressure: pressure.value,
    airSpeed: speed,
    activity: x.activity ?? traits.quietActivity,
  });
}
