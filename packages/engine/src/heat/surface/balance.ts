/**
 * The heat balance of a basin at one moment, checked, with its working and what it may be off by.
 *
 * What it answers: how much heat leaves this water now, and by which way. The equations and the sign (heat leaving the
 * water counts above zero, so that sun is below) stand in `losses`, which is the fast form of the same sums.
 *
 * How far to believe it: evaporation is most of a bare pool's loss and good to ±30 % at best. `evaporationUncertainty`
 * carries that half-width in watts, and whoever sizes or prices with the total carries it on.
 *
 * Source: first law; each flow has its own source in its own file.
 * Range: see `issues`; water 0 to 50 °C, air −50 to 60 °C, wind at the water to 15 m/s.
 * Errors: every value outside its range; more vapour than the air can hold; a still-air method in wind.
 *
 * Worked example: 50 m2 at 27 °C, air 20 °C at 50 %, 1 m/s, sky 5 °C, mains 12 °C, no sun, bare → evaporation
 * 15.7 kW ± 4.7, convection 2.5, long wave 5.7, make-up 0.4, in all 24.3 kW.
 */
import { fail, ok, type Recorder, type Result } from '../../trace/index.ts';
import { COVERS } from './cover.ts';
import { EVAPORATION_TRAITS } from './evaporation/index.ts';
import { airSpeedIssues, settingIssues, stateIssues } from './issues.ts';
import {
  emptyLosses,
  type SurfaceLosses,
  type SurfaceSetting,
  type SurfaceState,
  surfaceLosses,
} from './losses.ts';
import { SOLAR_ABSORPTION, WATER_EMISSIVITY } from './radiation.ts';
import { recordLosses } from './working.ts';

export interface SurfaceBalance extends Readonly<SurfaceLosses> {
  /** 95 % half-width of evaporation, spillway included, W. */
  readonly evaporationUncertainty: number;
}

/** An open pool with light lining, bare, whose walls and make-up are left out: to be spread and added to. */
export const PLAIN_SURFACE = {
  evaporation: 'smith',
  convection: 'linear',
  emissivity: WATER_EMISSIVITY,
  skyView: 1,
  absorption: SOLAR_ABSORPTION.light,
  shade: 0,
  cover: COVERS.none,
  groundConductance: 0,
  airConductance: 0,
  otherMakeUp: 0,
} as const satisfies Omit<SurfaceSetting, 'area'>;

/** Every flow of heat out of a basin (W), their total, and the uncertainty of evaporation. */
export function surfaceBalance(
  setting: SurfaceSetting,
  state: SurfaceState,
  recorder?: Recorder,
): Result<SurfaceBalance> {
  const issues = [
    ...settingIssues(setting),
    ...stateIssues(state),
    ...airSpeedIssues(setting.evaporation, state.airSpeed),
  ];
  if (issues.length > 0) return fail(...issues);
  const out = emptyLosses();
  surfaceLosses(setting, state, out);
  if (recorder !== undefined) recordLosses(setting, state, { losses: out, recorder });
  const share = EVAPORATION_TRAITS[setting.evaporation].relativeUncertainty;
  return ok({ ...out, evaporationUncertainty: share * (Math.abs(out.evaporation) + Math.abs(out.spillway)) });
}
