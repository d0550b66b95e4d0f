/** What the picture of the water line is made of: values in SI, each part with what it lacks. */
import type { Issue } from '@firstfire/engine';
import type { ReadingPath } from '../facts/view.ts';
import type { FilterState, LoopState } from '../plant/water/loop-states.ts';

/** A part of the loop by its record. */
export interface WaterPart {
  readonly id: string;
  /** As people call it; empty where it has no name. */
  readonly name: string;
  /** Readings without which it cannot be reckoned with. */
  readonly missing: readonly ReadingPath[];
}

export interface WaterBasinShown extends WaterPart {
  /** Both a suction and a return lead to it. */
  readonly level: number | undefined;
}

export interface WaterHeaterShown extends WaterPart {
  /** Band on its nameplate, m3/s. */
  readonly least: number | undefined;
  readonly most: number | undefined;
  readonly switch: WaterSwitch;
}

export interface WaterRunShown extends WaterPart {
  readonly role: string;
  /** Basin of a suction or a return. */
  readonly basin: string;
  /** Heater of a branch. */
  readonly heater: string;
  /** Trade size. */
  readonly size: string;
  /** m. */
  readonly insideDiameter: number | undefined;
}

export interface WaterSpeedShown extends WaterPart {
  /** Of the motor, 1/s. */
  readonly speed: number | undefined;
  readonly heating: boolean;
}

/** Openings of the bypass at which every heater keeps inside its band in all states. */
export type BypassHolds =
  | { readonly found: 'interval'; readonly low: number; readonly high: number }
  | {
      readonly found: 'none';
      /** `too-little`, `too-much` or `conflict`. */
      readonly reason: string;
      /** Ids of the states that cannot be held: `h1 high dirty spa`. */
      readonly between: readonly string[];
    }
  | { readonly found: 'unknown'; readonly missing: readonly ReadingPath[] };

export interface WaterBypassShown {
  /** `manual`, `none`, or empty while nobody has said. */
  readonly kind: string;
  /** Where its handle stands, 0 shut, 1 open. */
  readonly opening: number | undefined;
  readonly holds: BypassHolds;
  readonly missing: readonly ReadingPath[];
}

/** The window of a heater's pressure switch, gauge, Pa. */
export interface WaterSwitch {
  /** `pressure`, `flow`, or empty while nobody has said. */
  readonly kind: string;
  /** Between these its making point may stand. */
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly setting: number | undefined;
  readonly missing: readonly ReadingPath[];
}

export interface HeaterInFlow {
  readonly id: string;
  /** May burn in this state. */
  readonly burns: boolean;
  /** m3/s. */
  readonly flow: number;
  /** Gauge, Pa. */
  readonly inletPressure: number;
  readonly outletPressure: number;
  /** With the pump off and the valves as in this state, Pa. */
  readonly restPressure: number;
  /** K, while it burns; undefined where its heat is not known. */
  readonly rise: number | undefined;
}

export interface RunInFlow {
  /** m3/s, without its direction. */
  readonly flow: number;
  /** m/s. */
  readonly velocity: number;
}

/** Gauge, Pa, at the height of the pump. */
export interface WaterPressures {
  readonly pumpInlet: number;
  readonly pumpOutlet: number;
  readonly filterInlet: number;
  readonly filterOutlet: number;
  /** Where heaters and bypass have come together again. */
  readonly return: number;
}

/** K. */
export interface WaterTemperatures {
  /** In the basin, at the pump and up to the heaters. */
  readonly basin: number;
  /** Behind all heaters, before the bypass joins. */
  readonly heated: number | undefined;
  readonly return: number | undefined;
}

/** The loop running in one state. */
export interface WaterFlowing {
  /** Through the pump, m3/s. */
  readonly flow: number;
  readonly bypass: number;
  /** m. */
  readonly pumpHead: number;
  readonly filterLoss: number;
  readonly pressures: WaterPressures;
  readonly temperatures: WaterTemperatures;
  readonly heaters: readonly HeaterInFlow[];
  /** By id, of those that have a place in the loop. */
  readonly runs: ReadonlyMap<string, RunInFlow>;
}

export interface WaterStateShown extends LoopState {
  readonly filter: FilterState;
  readonly heating: boolean;
  /** Undefined where readings are missing or nothing can flow so. */
  readonly flowing: WaterFlowing | undefined;
  readonly missing: readonly ReadingPath[];
  readonly issues: readonly Issue[];
}

/** Flow m3/s, head m. */
export type HeadPoint = readonly [flow: number, head: number];

export interface PumpCurveShown {
  readonly speed: string;
  readonly points: readonly HeadPoint[];
}

export interface SystemCurveShown {
  readonly basin: string;
  readonly filter: FilterState;
  readonly points: readonly HeadPoint[];
}

export interface WaterCurves {
  readonly pump: readonly PumpCurveShown[];
  readonly system: readonly SystemCurveShown[];
}

export interface WaterPicture {
  /** Whether any part of the loop has been read. */
  readonly drawn: boolean;
  readonly arrangement: 'direct' | 'reverse';
  readonly basins: readonly WaterBasinShown[];
  readonly pump: WaterPart;
  readonly filter: WaterPart;
  readonly heaters: readonly WaterHeaterShown[];
  readonly runs: readonly WaterRunShown[];
  readonly speeds: readonly WaterSpeedShown[];
  readonly bypass: WaterBypassShown;
  readonly states: readonly WaterStateShown[];
  /** Readings that every flow waits for. */
  readonly missing: readonly ReadingPath[];
  readonly temperatureAssumed: boolean;
}
