/**
 * A gas system as it stands: pipes, meter and regulators between junctions, loads that hang on them, one supply.
 * Flows are standard m3/s (15 °C, 101.325 kPa), pressures gauge Pa at their own height.
 */
import type { CorrugatedTable } from '../code/corrugated.ts';
import type { Fuel } from '../fuel.ts';

interface Between {
  readonly id: string;
  /** Junction at the end nearer the supply, or either end of a pipe in a loop. */
  readonly from: string;
  readonly to: string;
  /** Shut by a valve. */
  readonly closed?: boolean;
}

export interface GasPipe extends Between {
  readonly type: 'pipe';
  readonly bore:
    | { readonly type: 'bore'; readonly insideDiameter: number; readonly roughness: number }
    | { readonly type: 'corrugated'; readonly ehd: number; readonly tables: readonly CorrugatedTable[] };
  /** Along the pipe, m. */
  readonly length: number;
  /** Sum of L/D of its fittings; those of corrugated tubing are in its tables. */
  readonly fittings?: number;
  /** Far end above near end, m. */
  readonly rise?: number;
}

export interface GasMeter extends Between {
  readonly type: 'meter';
  /** Badge capacity, m3/s of gas of gravity 0.60 near the atmosphere. */
  readonly badge: number;
  /** Loss at that flow, Pa; 0.5 in w.c. for most. */
  readonly badgeDrop: number;
}

export interface GasRegulator extends Between {
  readonly type: 'regulator';
  /** Outlet with gas flowing, gauge Pa. */
  readonly setPressure: number;
  /** Outlet with none, gauge Pa; not below the set pressure. */
  readonly lockUpPressure: number;
  /** Fall of the outlet from set pressure at capacity, Pa. */
  readonly droop: number;
  /** Flow at which it droops that far, standard m3/s. */
  readonly capacity: number;
  /** Loss through it wide open at capacity, Pa: what it needs over its outlet to work. */
  readonly wideOpenDrop: number;
}

export type GasLink = GasPipe | GasMeter | GasRegulator;

export interface GasLoad {
  readonly id: string;
  readonly node: string;
  /** Full flow, standard m3/s. */
  readonly flow: number;
  /** Gauge pressure under which it takes less, Pa; the usual manifold pressure of the fuel unless given. */
  readonly manifoldPressure?: number;
}

export interface GasSupply {
  readonly node: string;
  /** Gauge, Pa; does not fall with flow. Street main, tank, or the outlet of what is left out. */
  readonly pressure: number;
}

export interface GasAmbient {
  /** Barometer at the supply, Pa. */
  readonly atmosphere: number;
  /** Of the gas in the pipes, K. */
  readonly temperature: number;
}

export interface GasSystemSpec {
  readonly fuel: Fuel;
  readonly ambient: GasAmbient;
  readonly supply: GasSupply;
  readonly links: readonly GasLink[];
  readonly loads: readonly GasLoad[];
}
