/** The vent tables in SI, by what they answer. */
import type { air } from '@firstfire/engine';
import { COMMON_VENT, COMMON_VENT_LARGE } from './common-vent.ts';
import { SINGLE_WALL } from './single-wall.ts';
import { SINGLE_WALL_CONNECTOR } from './single-wall-connector.ts';
import { TYPE_B, TYPE_B_LARGE } from './type-b.ts';
import { VENT_CONNECTOR } from './vent-connectors.ts';
import { type PrintedVentTable, ventTableOf } from './vent-rows.ts';

/** Groups of the tables of one appliance and of connectors. */
export const GROUP = { fanLeast: 0, fanMost: 1, naturalMost: 2 } as const;

interface TablesOfVent {
  readonly most: air.VentTable;
  /** Fan-assisted burners only: below it the vent stays wet. */
  readonly least?: air.VentTable;
}

const withFan = (printed: PrintedVentTable): TablesOfVent => ({
  most: ventTableOf(printed, GROUP.fanMost),
  least: ventTableOf(printed, GROUP.fanLeast),
});
const natural = (printed: PrintedVentTable): TablesOfVent => ({
  most: ventTableOf(printed, GROUP.naturalMost),
});

const SINGLE: Readonly<Record<air.VentKind, TablesOfVent>> = {
  'type-b-natural': natural(TYPE_B),
  'type-b-fan': withFan(TYPE_B),
  'single-wall-connector-natural': natural(SINGLE_WALL_CONNECTOR),
  'single-wall-connector-fan': withFan(SINGLE_WALL_CONNECTOR),
  'single-wall-natural': { most: ventTableOf(SINGLE_WALL, 0) },
};

const SINGLE_LARGE = withFan(TYPE_B_LARGE);

/** Tables of one appliance on its own vent of this diameter (m). */
export function ventTables(kind: air.VentKind, diameter: number): TablesOfVent {
  return kind === 'type-b-fan' && isIn(SINGLE_LARGE.most, diameter) ? SINGLE_LARGE : SINGLE[kind];
}

const CONNECTOR = { fan: withFan(VENT_CONNECTOR), natural: natural(VENT_CONNECTOR) } as const;

/** Tables of one appliance's type B connector to a common vent. */
export function connectorTables(burner: air.VentedBurner): TablesOfVent {
  return CONNECTOR[burner];
}

const MIX = ['all', 'some', 'none'] as const;

/** Which of the appliances on a common vent have a fan. */
export type FanMix = (typeof MIX)[number];

const COMMON = MIX.map((_mix, group) => ventTableOf(COMMON_VENT, group));
const COMMON_LARGE = MIX.map((_mix, group) => ventTableOf(COMMON_VENT_LARGE, group));

/** Table of the common part of a type B vent of this diameter (m). */
export function commonVentTable(mix: FanMix, diameter: number): air.VentTable {
  const group = MIX.indexOf(mix);
  const large = COMMON_LARGE[group];
  const small = COMMON[group];
  if (small === undefined || large === undefined) throw new Error(`no common vent table for ${mix}`);
  return isIn(large, diameter) ? large : small;
}

/** A nominal diameter or more; a metric one counts as its next inch. */
function isIn({ diameters }: air.VentTable, diameter: number): boolean {
  return diameter * 1.02 >= (diameters[0] ?? Number.POSITIVE_INFINITY);
}
