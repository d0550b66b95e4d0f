/**
 * A year's question, checked and laid out as flat arrays for the march through its hours.
 *
 * Stored heat is C·T with C = V·ρ·cp at 27 °C, constant: cp varies by 0.1 % between 15 and 40 °C and the mass stays,
 * since what evaporates is made up. An hour is cut into equal steps so short that the losses cannot follow the
 * temperature by more than a tenth in one of them; a garden pool needs one step, a windy spa a few.
 */
import { densityOfWater, specificHeatOfWater } from '../../properties/index.ts';
import { HOUR, ZERO_CELSIUS } from '../../quantity/index.ts';
import { fail, ok, type Result } from '../../trace/index.ts';
import { type HourlyWeather, isLeap, monthOfHours } from '../climate/index.ts';
import {
  airSpeedIssues,
  EVAPORATION_TRAITS,
  type SurfaceLosses,
  type SurfaceSetting,
  surfaceLosses,
} from '../surface/index.ts';
import { type Exposure, type Forcing, forcingOf } from './forcing.ts';
import { inputIssues } from './model-issues.ts';
import { LossScratch, type MutableState, StateScratch } from './scratch.ts';

/** Temperature at which the water's properties are taken, K. */
export const REFERENCE_WATER = 300.15;
/** Heat (J/K) in a cubic metre of pool water. */
export const VOLUMETRIC_HEAT = densityOfWater(REFERENCE_WATER) * specificHeatOfWater(REFERENCE_WATER);

export interface YearBasin {
  readonly setting: SurfaceSetting;
  /** m3. */
  readonly volume: number;
  readonly exposure: Exposure;
  /** Wanted temperature of every hour, K; 0 where not heated. */
  readonly setPoint: Float64Array;
  /** Share covered in every hour. */
  readonly covered: Float64Array;
  /** Activity of every hour, see `EvaporationState`; quiet water where absent. */
  readonly activity?: Float64Array;
}

export interface YearInput {
  readonly weather: HourlyWeather;
  /** One basin or two; the first has the heater before the second. */
  readonly basins: readonly YearBasin[];
  /** Heat that all heaters together can put into the water, W. */
  readonly output: number;
  /** Water traded between the two basins in every hour, m3/s each way. */
  readonly exchange?: Float64Array;
  /** Temperature of each basin as the year begins, K; where absent the year follows one like itself. */
  readonly start?: readonly number[];
  /** How far below its set point a basin still counts as holding it, K; 0.5 where absent. */
  readonly tolerance?: number;
}

/** One basin, ready to march. */
export interface BasinModel extends Forcing {
  readonly setting: SurfaceSetting;
  /** C, J/K. */
  readonly capacity: number;
  readonly setPoint: Float64Array;
  readonly covered: Float64Array;
  readonly activity: Float64Array;
  /** Temperature (K) and ice (J that it lacks) as the march goes on. */
  readonly now: Float64Array;
  /** Scratch, used again and again. */
  readonly state: MutableState;
  readonly losses: SurfaceLosses;
}

export interface YearModel {
  readonly hours: number;
  readonly monthOfHour: Uint8Array;
  readonly basins: readonly BasinModel[];
  readonly output: number;
  /** W/K between the basins, every hour. */
  readonly exchange: Float64Array;
  readonly steps: number;
  readonly tolerance: number;
}

const MOST_STEPS = 60;
const FOLLOWED = 0.1;

/** The model of a year, or everything that is wrong with the question. */
export function yearModel(input: YearInput): Result<YearModel> {
  const issues = inputIssues(input);
  const forcings = input.basins.map((basin) => forcingOf(input.weather, basin.exposure));
  for (const forcing of forcings) if (!forcing.ok) issues.push(...forcing.issues);
  if (issues.length > 0) return fail(...issues);
  const basins = input.basins.flatMap((basin, i) => {
    const forcing = forcings[i];
    return forcing?.ok ? [basinModel(basin, forcing.value, input.start?.[i])] : [];
  });
  const windy = basins.flatMap((basin) => airSpeedIssues(basin.setting.evaporation, highest(basin.airSpeed)));
  if (windy.length > 0) return fail(...windy);
  const steps = Math.max(...basins.map(stepsAnHour));
  if (!(steps <= MOST_STEPS))
    return fail({
      code: 'ill-formed',
      where: 'volume',
      reason: 'too-shallow-for-the-hour',
      found: steps,
      max: MOST_STEPS,
    });
  const { hours } = input.weather;
  return ok({
    hours,
    monthOfHour: monthOfHours(isLeap(input.weather)),
    basins,
    output: input.output,
    exchange: input.exchange?.map((flow) => flow * VOLUMETRIC_HEAT) ?? new Float64Array(hours),
    steps,
    tolerance: input.tolerance ?? 0.5,
  });
}

function basinModel(basin: YearBasin, forcing: Forcing, start: number | undefined): BasinModel {
  const { setting, volume, setPoint, covered } = basin;
  const first = forcing.airTemperature[0] ?? REFERENCE_WATER;
  const quiet = EVAPORATION_TRAITS[setting.evaporation].quietActivity;
  return {
    ...forcing,
    setting,
    capacity: volume * VOLUMETRIC_HEAT,
    setPoint,
    covered,
    activity: basin.activity ?? new Float64Array(setPoint.length).fill(quiet),
    now: Float64Array.of(start ?? Math.max(ZERO_CELSIUS, (setPoint[0] ?? 0) || first), 0),
    state: new StateScratch(),
    losses: new LossScratch(),
  };
}

/** Steps an hour needs in the windiest hour of the year at the hottest water wanted. */
function stepsAnHour(basin: BasinModel): number {
  const windiest = basin.airSpeed.reduce((at, v, i) => (v > (basin.airSpeed[at] ?? 0) ? i : at), 0);
  loadHour(basin, windiest);
  const { state, losses, setting } = basin;
  state.covered = 0;
  state.waterTemperature = Math.max(303.15, highest(basin.setPoint));
  const high = surfaceLosses(setting, state, losses);
  state.waterTemperature -= 1;
  const slope = high - surfaceLosses(setting, state, losses);
  return Math.max(1, Math.ceil((HOUR * slope) / (FOLLOWED * basin.capacity)));
}

function highest(values: Float64Array): number {
  return values.reduce((a, b) => Math.max(a, b), 0);
}

/** Brings the weather of an hour into the state of a basin. */
export function loadHour(basin: BasinModel, hour: number): void {
  const { state } = basin;
  state.airTemperature = basin.airTemperature[hour] as number;
  state.vapourPressure = basin.vapourPressure[hour] as number;
  state.pressure = basin.pressure[hour] as number;
  state.airSpeed = basin.airSpeed[hour] as number;
  state.skyTemperature = basin.skyTemperature[hour] as number;
  state.sun = basin.sun[hour] as number;
  state.groundTemperature = basin.groundTemperature[hour] as number;
  state.mainsTemperature = basin.mainsTemperature[hour] as number;
  state.covered = basin.covered[hour] as number;
  state.activity = basin.activity[hour] as number;
}
