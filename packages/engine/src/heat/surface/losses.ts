/**
 * Every heat flow out of a basin at one moment, W: the fast kernel of the hourly year and the one of every balance.
 *
 *     evaporation   c·(pw − pa)·A·cover            c by the method, W/(m2 Pa)
 *     convection    h·(Tw − Ta)·A·cover
 *     long wave     ε·σ·(Tw⁴ − F·Tsky⁴ − (1 − F)·Ta⁴)·A·cover
 *     sun           −α·(1 − shade)·G·A·cover       a gain, and therefore below zero
 *     ground        UA·(Tw − Tg) + UA'·(Tw − Ta)
 *     make-up       ṁ·(h(Tw) − h(Tmains)), ṁ what evaporates and what is lost otherwise
 *     spillway      evaporation and convection of the falling sheet, uncovered
 *     air jets      heat carried off by the air blown through
 *
 * All count as heat leaving the water, so that the total is their plain sum. Nothing is checked and nothing allocated:
 * the caller owns `out` and may use the same state and result again and again. `surfaceBalance` is the checked door.
 */
import { latentHeatOfWater, saturationPressureAt } from '../../properties/index.ts';
import { type AirJets, airJetHeat } from './air-jets.ts';
import { type ConvectionMethod, convectionCoefficient } from './convection.ts';
import { type Cover, underCover } from './cover.ts';
import {
  type EvaporationMethod,
  type EvaporationState,
  evaporationCoefficient,
  evaporationPerSpeed,
} from './evaporation/index.ts';
import { makeUpHeat } from './make-up.ts';
import { absorbedSunHeat, longWaveHeat } from './radiation.ts';
import { type Spillway, spillwayArea, spillwaySpeed } from './spillway.ts';

/** What of a basin and its place does not change by the hour. */
export interface SurfaceSetting {
  readonly evaporation: EvaporationMethod;
  readonly convection: ConvectionMethod;
  /** Water surface, m2. */
  readonly area: number;
  /** ε of water for long waves. */
  readonly emissivity: number;
  /** Share of the sky the water sees, 0 indoors. */
  readonly skyView: number;
  /** α, share of the sun on it that the water keeps. */
  readonly absorption: number;
  /** Share of the sun kept off. */
  readonly shade: number;
  readonly cover: Cover;
  /** U·A to the ground, W/K. */
  readonly groundConductance: number;
  /** U·A of walls to the open air, W/K. */
  readonly airConductance: number;
  /** Water replaced for other reasons than evaporation, kg/s. */
  readonly otherMakeUp: number;
  readonly spillway?: Spillway;
  readonly airJets?: AirJets;
}

/** What changes by the hour. */
export interface SurfaceState extends EvaporationState {
  /** Tsky, K. */
  readonly skyTemperature: number;
  /** G on the horizontal, W/m2. */
  readonly sun: number;
  /** Share of the water under its cover, 0 to 1. */
  readonly covered: number;
  /** K. */
  readonly groundTemperature: number;
  /** K. */
  readonly mainsTemperature: number;
}

/** Heat leaving the water, W. */
export interface SurfaceLosses {
  evaporation: number;
  convection: number;
  longWave: number;
  /** Below zero: a gain. */
  sun: number;
  ground: number;
  makeUp: number;
  spillway: number;
  airJets: number;
  total: number;
  /** Water that evaporates, kg/s; below zero where it condenses. */
  evaporated: number;
}

/** A result to hand to `surfaceLosses`. */
export function emptyLosses(): SurfaceLosses {
  return {
    evaporation: 0,
    convection: 0,
    longWave: 0,
    sun: 0,
    ground: 0,
    makeUp: 0,
    spillway: 0,
    airJets: 0,
    total: 0,
    evaporated: 0,
  };
}

/** Writes every flow (W) of a basin in a state into `out`, and gives their sum. */
export function surfaceLosses(setting: SurfaceSetting, x: SurfaceState, out: SurfaceLosses): number {
  const { area, cover } = setting;
  const dry = x.waterTemperature - x.airTemperature;
  const atWater = saturationPressureAt(x.waterTemperature);
  const wet = atWater - x.vapourPressure;
  const coefficient = evaporationCoefficient(setting.evaporation, x, atWater);
  const film = convectionCoefficient(setting.convection, x.airSpeed, coefficient * x.pressure);
  const dryShare = underCover(cover.dry, x.covered);
  out.evaporation = area * coefficient * wet * underCover(cover.evaporation, x.covered);
  out.convection = area * film * dry * dryShare;
  out.longWave = area * longWaveHeat(setting, x) * dryShare;
  out.sun = 0 - area * absorbedSunHeat(setting, x.sun) * underCover(cover.sun, x.covered);
  out.ground =
    setting.groundConductance * (x.waterTemperature - x.groundTemperature) + setting.airConductance * dry;
  const sheetWet = spillwayLoss(setting, x, coefficient, out);
  out.airJets = setting.airJets === undefined ? 0 : setting.airJets.running * airJetHeat(setting.airJets, x);
  out.evaporated = (out.evaporation + sheetWet) / latentHeatOfWater(x.waterTemperature);
  const replaced = Math.max(0, out.evaporated) + setting.otherMakeUp;
  out.makeUp = replaced === 0 ? 0 : makeUpHeat(replaced, x.waterTemperature, x.mainsTemperature);
  out.total =
    out.evaporation +
    out.convection +
    out.longWave +
    out.sun +
    out.ground +
    out.makeUp +
    out.spillway +
    out.airJets;
  return out.total;
}

/** Writes what the falling sheet loses (W) into `out`, and gives the part that evaporates. */
function spillwayLoss(setting: SurfaceSetting, x: SurfaceState, still: number, out: SurfaceLosses): number {
  const sheet = setting.spillway;
  out.spillway = 0;
  if (sheet === undefined) return 0;
  const speed = spillwaySpeed(sheet);
  const area = sheet.running * spillwayArea(sheet);
  const coefficient = still + evaporationPerSpeed(setting.evaporation) * speed;
  const film = convectionCoefficient(setting.convection, x.airSpeed + speed, coefficient * x.pressure);
  const wet = area * coefficient * (saturationPressureAt(x.waterTemperature) - x.vapourPressure);
  out.spillway = wet + area * film * (x.waterTemperature - x.airTemperature);
  return wet;
}
