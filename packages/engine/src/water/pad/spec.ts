/**
 * An equipment pad as it is drawn: basins, suction, pump, filter, heaters beside a bypass, returns.
 *
 *     basins ─ suctions ─ suction line ─ pump ─ discharge line ─ filter ─ approach ─┬─ heaters ─┬─ departure ─ returns ─ basins
 *                                                                                 └── bypass ──┘
 *
 * All heights are over one datum, usually the surface of the pool. Heads are total heads; a run's K carries its
 * entrance, fittings and exit.
 */
import type { LossLaw } from '../loss/loss-law.ts';
import type { PumpCurve } from '../pump/curve.ts';
import type { Valve } from '../valve/characteristic.ts';
import type { Line } from './line.ts';

export interface Basin {
  readonly id: string;
  /** Height of its water surface over the datum, m; a raised spa's is that of its spillway. */
  readonly level: number;
}

/** A way between a basin and the pad, with the port of the valve that opens it. */
export interface BasinBranch {
  /** Id of the basin. */
  readonly basin: string;
  readonly line: Line;
  /** The port of the (three-way) valve, fully open; its loss grows as 1/opening². Absent: always open. */
  readonly port?: { readonly k: number; readonly insideDiameter: number };
  /** A check valve that keeps the water from running back. */
  readonly oneWay?: boolean;
}

/** Water that runs over an edge from a raised basin into another. */
export interface Spillway {
  readonly from: string;
  readonly to: string;
  /** Width of the edge, m. */
  readonly width: number;
}

export interface PadPump {
  readonly curve: PumpCurve;
  /** Height of its shaft over the datum, m: positive is a suction lift. */
  readonly elevation: number;
  /** Water power over wire power, if known. */
  readonly efficiency?: number;
}

export interface PadFilter {
  /** Loss when clean. */
  readonly clean: LossLaw;
  /** Height of its gauge over the datum, m. */
  readonly elevation: number;
}

export interface FlowBand {
  /** m3/s. */
  readonly least: number;
  /** m3/s. */
  readonly most: number;
}

export interface PadHeater {
  readonly id: string;
  readonly loss: LossLaw;
  readonly band: FlowBand;
  /** Height of its inlet and water-pressure switch over the datum, m. */
  readonly elevation: number;
  /** Bore of the header where the switch sits, m; absent: its tap is taken to feel no velocity. */
  readonly tapDiameter?: number;
  /** From the supply header to its inlet. */
  readonly inlet: Line;
  /** From its outlet to the return header. */
  readonly outlet: Line;
}

/**
 * Heaters side by side between two headers. In a direct return the water that comes first leaves first; in a
 * reverse return the heater that comes first leaves last, which evens the ways out. With one heater both are the same.
 */
export interface HeaterBank {
  readonly arrangement: 'direct' | 'reverse';
  readonly heaters: readonly PadHeater[];
  /** Header between one heater and the next, supply side; one line fewer than heaters. */
  readonly supplyHeader: readonly Line[];
  /** The same on the return side. */
  readonly returnHeader: readonly Line[];
}

export interface Bypass {
  readonly valve: Valve;
  readonly line: Line;
}

export interface PadSpec {
  readonly basins: readonly Basin[];
  readonly suctions: readonly BasinBranch[];
  readonly suction: Line;
  readonly pump: PadPump;
  readonly discharge: Line;
  readonly filter: PadFilter;
  readonly approach: Line;
  readonly bank?: HeaterBank;
  readonly bypass?: Bypass;
  readonly departure: Line;
  readonly returns: readonly BasinBranch[];
  readonly spillways?: readonly Spillway[];
  /** Water temperature unless a state says otherwise, K. */
  readonly temperature: number;
  /** Absolute pressure of the air, Pa. */
  readonly airPressure: number;
}

/** How far each branch is open, 0 to 1, by the id of its basin; one that is not named is shut. */
export type Openings = Readonly<Record<string, number>>;

/** One way the pad can stand. Left-out values are as drawn: clean, bypass shut, the first basin of each side open. */
export interface PadState {
  /** Pump speed over that of its curve; under a thousandth it counts as off. */
  readonly speed: number;
  /** Filter resistance over clean. */
  readonly loading?: number;
  /** Openings of the suctions. */
  readonly from?: Openings;
  /** Openings of the returns. */
  readonly to?: Openings;
  /** Opening of the bypass valve, 0 to 1; any opening under a millionth counts as shut. */
  readonly bypass?: number;
  /** Water temperature, K. */
  readonly temperature?: number;
  /** What time and faults do. */
  readonly wear?: PadWear;
}

/** Factors on what is drawn; 1 is as drawn. */
export interface PadWear {
  /** On the pump's head. */
  readonly pump?: number;
  /** On the loss of the suction lines: a full strainer. */
  readonly suction?: number;
  /** On the loss of every heater: scale; below 1: an inner bypass stuck open. */
  readonly heater?: number;
  /** On the loss of departure and return lines. */
  readonly returns?: number;
}
