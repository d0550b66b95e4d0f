/**
 * The objects the march writes into, hour after hour.
 *
 * Classes, and every field a fraction from the first, so that the engine that runs this keeps each field as a number
 * in place. Plain objects share their layout with every other object of the same names (a formula's table of inputs,
 * whose fields are not numbers), and each write to them would make a new small object, ten times an hour.
 */
import type { SurfaceLosses, SurfaceState } from '../surface/index.ts';

export type MutableState = { -readonly [K in keyof SurfaceState]: SurfaceState[K] };

/** A state to be filled in. */
export class StateScratch implements MutableState {
  waterTemperature = 300.5;
  airTemperature = 290.5;
  vapourPressure = 1000.5;
  pressure = 100_000.5;
  airSpeed = 0.5;
  activity = 1.5;
  skyTemperature = 270.5;
  sun = 0.5;
  covered = 0.5;
  groundTemperature = 280.5;
  mainsTemperature = 280.5;
}

/** Losses to be written. */
export class LossScratch implements SurfaceLosses {
  evaporation = 0.5;
  convection = 0.5;
  longWave = 0.5;
  sun = 0.5;
  ground = 0.5;
  makeUp = 0.5;
  spillway = 0.5;
  airJets = 0.5;
  total = 0.5;
  evaporated = 0.5;
}
