/** What the picture of the gas line is made of: values in SI, by state, each part with what it lacks. */
import type { gas, Issue } from '@firstfire/engine';
import type { Finding } from '@firstfire/reference';
import type { ReadingPath } from '../facts/view.ts';
import type { PlannedLoad } from '../plant/gas/gas-plan.ts';
import type { GasState } from '../plant/gas/physical-system.ts';

/** A figure for each state in which it is known. */
export type ByState = Readonly<Partial<Record<GasState, number>>>;

/** Meter, line regulator, or a section of pipe or tube. */
export interface GasLink {
  readonly type: 'meter' | 'regulator' | 'section';
  readonly id: string;
  /** As people call it; empty where it has no name. */
  readonly name: string;
  readonly material?: string;
  /** Trade size. */
  readonly size?: string;
  /** m; what the line is drawn as thick as. Of corrugated tubing the bore of about the same trade size. */
  readonly bore?: number;
  /** m, fittings not counted. */
  readonly length?: number;
  /** By name. */
  readonly fittings: Readonly<Record<string, number>>;
  /** Gauge, Pa, of a regulator. */
  readonly setPressure?: number;
  /** Standard m3/s, away from the supply. */
  readonly flow: ByState;
  /** Pa lost along it. */
  readonly drop: ByState;
  /** Its standing by the sizing method of the code, or a regulator's by its capacity. */
  readonly code?: Finding;
  readonly missing: readonly ReadingPath[];
}

export interface GasHung {
  readonly id: string;
  readonly kind: PlannedLoad['kind'];
  /** As people call it; its id where it has no name. */
  readonly name: string;
  /** W. */
  readonly input: number | undefined;
  readonly inputReading: ReadingPath;
}

export interface GasNode {
  readonly id: string;
  /** Gauge, Pa. */
  readonly pressures: ByState;
  readonly hung: readonly GasHung[];
  readonly branches: readonly GasBranch[];
  readonly leads: boolean;
}

export interface GasBranch {
  readonly link: GasLink;
  readonly end: GasNode;
}

/** One piece of the way to the heater. */
export interface GasLeg {
  readonly link: GasLink;
  readonly from: ByState;
  readonly to: ByState;
  /** Junction at its end. */
  readonly end: GasNode;
}

export interface GasHeaterSeen {
  readonly id: string;
  readonly name: string;
  readonly node: string;
  readonly pressures: ByState;
  /** Gauge, Pa, by its nameplate. */
  readonly least: number | undefined;
  readonly greatest: number | undefined;
  /** The findings about what arrives: with everything on, and with all off. */
  readonly judged: Readonly<Partial<Record<GasState, Finding>>>;
  /** From the supply on; empty while the heater is not connected. */
  readonly way: readonly GasLeg[];
  /** Id of the section on its way that loses most with everything on, else with the heater alone. */
  readonly dearest: string | undefined;
}

export interface GasStateStanding {
  /** Readings it waits for; with pressures shown nonetheless, those behind which something is hidden. */
  readonly missing: readonly ReadingPath[];
  readonly issues: readonly Issue[];
}

export interface GasPicture {
  /** Whether anything hangs on the supply. */
  readonly drawn: boolean;
  readonly fuel: gas.FuelName;
  readonly metered: boolean;
  /** At the outlet of the service regulator, ahead of the meter. */
  readonly outlet: ByState;
  readonly root: GasNode;
  readonly heater: GasHeaterSeen | undefined;
  /** Every heater that is planned, to choose among. */
  readonly heaters: readonly Pick<GasHeaterSeen, 'id' | 'name'>[];
  readonly states: Readonly<Record<GasState, GasStateStanding>>;
  readonly loose: {
    readonly links: readonly GasLink[];
    readonly hung: readonly GasHung[];
  };
  /** Sections that close a loop. */
  readonly closing: readonly GasLink[];
}
