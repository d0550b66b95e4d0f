/** What can be wrong with the setting and the state of a water surface, all of it at once. */
import { saturationPressureAt } from '../../properties/index.ts';
import { type Issue, type Variable, variableIssue } from '../../trace/index.ts';
import { EVAPORATION_TRAITS, type EvaporationMethod, STILL_AIR_SPEED } from './evaporation/index.ts';
import type { SurfaceSetting, SurfaceState } from './losses.ts';
import {
  ACTIVITY,
  AIR_SPEED,
  AIR_TEMPERATURE_AT_POOL,
  PRESSURE_AT_POOL,
  WATER_TEMPERATURE,
} from './variables.ts';

const SHARE: Variable = { symbol: '', kind: 'ratio', min: 0, max: 1 };
const CONDUCTANCE: Variable = { symbol: 'U·A', kind: 'conductance', min: 0, max: 1e5 };

const STATE: Readonly<Record<keyof SurfaceState, Variable>> = {
  waterTemperature: WATER_TEMPERATURE,
  airTemperature: AIR_TEMPERATURE_AT_POOL,
  vapourPressure: { symbol: 'pa', kind: 'absolute-pressure', min: 0, max: 2e4 },
  pressure: PRESSURE_AT_POOL,
  airSpeed: AIR_SPEED,
  activity: ACTIVITY,
  skyTemperature: { symbol: 'Tsky', kind: 'temperature', min: 173.15, max: 333.15 },
  sun: { symbol: 'G', kind: 'heat-flux', min: 0, max: 1400 },
  covered: SHARE,
  groundTemperature: AIR_TEMPERATURE_AT_POOL,
  mainsTemperature: WATER_TEMPERATURE,
};

const SETTING = {
  area: { symbol: 'A', kind: 'area', min: 0, max: 1e4 },
  emissivity: SHARE,
  skyView: SHARE,
  absorption: SHARE,
  shade: SHARE,
  groundConductance: CONDUCTANCE,
  airConductance: CONDUCTANCE,
  otherMakeUp: { symbol: 'ṁ', kind: 'mass-flow', min: 0, max: 100 },
} as const satisfies Partial<Record<keyof SurfaceSetting, Variable>>;

const COVER = { evaporation: SHARE, dry: SHARE, sun: SHARE } as const;
const SPILLWAY = {
  width: { symbol: 'w', kind: 'length', min: 0, max: 50 },
  fall: { symbol: 'h', kind: 'length', min: 0, max: 10 },
  running: SHARE,
} as const;
const AIR_JETS = {
  airFlow: { symbol: 'V̇', kind: 'volume-flow', min: 0, max: 1 },
  warming: { symbol: 'ΔT', kind: 'temperature-difference', min: 0, max: 60 },
  saturation: SHARE,
  running: SHARE,
} as const;

type Ranges = Readonly<Record<string, Variable>>;

function outside<R extends Ranges>(x: { readonly [K in keyof R]: number }, ranges: R, prefix = ''): Issue[] {
  return Object.entries(ranges).flatMap(([name, range]) => {
    const issue = variableIssue(prefix + name, x[name as keyof R], range);
    return issue ? [issue] : [];
  });
}

/** The issue of an evaporation method used in more wind than it knows, if any. */
export function airSpeedIssues(method: EvaporationMethod, airSpeed: number): Issue[] {
  if (EVAPORATION_TRAITS[method].usesAirSpeed || !(airSpeed > STILL_AIR_SPEED)) return [];
  const reason = 'method-for-still-indoor-air';
  return [
    {
      code: 'out-of-range',
      where: 'airSpeed',
      found: airSpeed,
      max: STILL_AIR_SPEED,
      kind: 'velocity',
      reason,
    },
  ];
}

/** Everything wrong with what changes by the hour. */
export function stateIssues(x: SurfaceState): Issue[] {
  const issues = outside(x, STATE);
  const most = saturationPressureAt(x.airTemperature);
  if (issues.length === 0 && x.vapourPressure > most * (1 + 1e-9)) {
    const found = x.vapourPressure;
    issues.push({
      code: 'contradiction',
      where: 'vapourPressure',
      found,
      max: most,
      reason: 'above-saturation',
    });
  }
  return issues;
}

/** Everything wrong with what stays. */
export function settingIssues(x: SurfaceSetting): Issue[] {
  return [
    ...outside(x, SETTING),
    ...outside(x.cover, COVER, 'cover.'),
    ...(x.spillway ? outside(x.spillway, SPILLWAY, 'spillway.') : []),
    ...(x.airJets ? outside(x.airJets, AIR_JETS, 'airJets.') : []),
  ];
}
