/** What the picture of the heat line is made of: values in SI. */
import type { heat, Issue } from '@firstfire/engine';
import type { ReadingPath } from '../facts/view.ts';

/** A way heat leaves the water. */
export type LossKind = Exclude<keyof heat.SurfaceLosses, 'total' | 'evaporated'>;

export interface HeatLossShown {
  readonly kind: LossKind;
  /** W; below zero it is a gain. */
  readonly heat: number;
}

/** Seconds from the start, K. */
export type WarmPoint = readonly [time: number, temperature: number];

export interface WarmUpShown {
  /** K. */
  readonly start: number;
  readonly target: number;
  /** The temperature the water never passes; far above any pool where the heaters are large. */
  readonly plateau: number;
  /** Until the target, s; undefined where it is never reached. */
  readonly time: number | undefined;
  /** From the start past the target towards the plateau. */
  readonly points: readonly WarmPoint[];
}

/** The basin with every heater of one nameplate input. */
export interface HeaterSizeShown {
  /** Of each heater, W. */
  readonly input: number;
  /** Of all together at the site, W. */
  readonly output: number;
  /** Undefined where the target is never reached, s. */
  readonly time: number | undefined;
  readonly plateau: number;
  /** Gives at least the hold load of the design day. */
  readonly holds: boolean;
  /** Warm within the wanted time; undefined where none is wanted. */
  readonly inTime: boolean | undefined;
}

/** The day the heaters are sized for. */
export interface DesignDayShown {
  readonly indoors: boolean;
  /** Where the climate is from; of no meaning indoors. */
  readonly source: 'bundled' | 'typed' | 'file';
  /** Name of the place its climate is that of; empty indoors. */
  readonly place: string;
  /** 1 to 12; zero indoors. */
  readonly month: number;
  /** Its air is one that somebody decided, not the mean of the month. */
  readonly decided: boolean;
  /** K. */
  readonly airTemperature: number;
  /** At the water, m/s. */
  readonly airSpeed: number;
  /** K. */
  readonly skyTemperature: number;
  /** Along the walls, K. */
  readonly groundTemperature: number;
  /** K. */
  readonly mainsTemperature: number;
  /** Share of the day under the cover. */
  readonly covered: number;
}

/** The cover of a basin as surveyed. */
export interface CoverShown {
  /** Empty while nobody has said. */
  readonly kind: string;
  /** A day, s. */
  readonly hours: number | undefined;
  /** Hours of the clock between which the year has it on. */
  readonly on: number;
  readonly off: number;
}

export interface HeatBasinShown {
  readonly id: string;
  /** As people call it; empty where it has no name. */
  readonly name: string;
  readonly shape: BasinShapeShown;
  /** m2 and m3; undefined while the shape is not known. */
  readonly area: number | undefined;
  readonly volume: number | undefined;
  /** Water temperature wanted of this basin, K. */
  readonly target: number | undefined;
  /** Time in which it shall be warm, s. */
  readonly wanted: number | undefined;
  readonly day: DesignDayShown | undefined;
  readonly cover: CoverShown;
  /** At the wanted temperature on the design day, W. */
  readonly losses: readonly HeatLossShown[];
  readonly hold: number | undefined;
  /** What the mean sun of the month would give, which the day leaves out, W. */
  readonly sunLeftOut: number | undefined;
  /** Half-width of evaporation, W. */
  readonly holdPlusMinus: number | undefined;
  readonly heaters: readonly string[];
  /** Nameplate input of the first of them, W. */
  readonly input: number | undefined;
  readonly output: number | undefined;
  readonly warmUp: WarmUpShown | undefined;
  readonly sizes: readonly HeaterSizeShown[];
  /** Without these the loss is not known, and without those the warm-up. */
  readonly missingForLoss: readonly ReadingPath[];
  readonly missing: readonly ReadingPath[];
  readonly issues: readonly Issue[];
}

/** Outline in m, and the readings that make it. */
export interface BasinShapeShown {
  /** Empty while nobody has said. */
  readonly shape: string;
  /** Fields of the measures, in the order one takes them. */
  readonly fields: readonly string[];
  /** m, of those fields that are known. */
  readonly measures: Readonly<Record<string, number>>;
  readonly corners: readonly (readonly [number, number])[];
}

export interface HeatPicture {
  readonly basins: readonly HeatBasinShown[];
}
