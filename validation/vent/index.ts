/** Vents: the chimney relation beside the code's tables, and the tables' worked examples. */
import { catalog } from '@firstfire/reference';
import type { Suite } from '../suite.ts';
import { chimneySuites } from './chimney-suites.ts';
import { VENT_RULES } from './rules.ts';
import { TABLE_EXAMPLES } from './table-examples.ts';

const { GROUP, SINGLE_WALL, SINGLE_WALL_CONNECTOR, TYPE_B, TYPE_B_LARGE } = catalog.air;

const fanRead = (known: catalog.air.CellKnown): boolean => known !== 'from memory';
const allRead = (known: catalog.air.CellKnown): boolean => known === 'read';
const fan = { group: GROUP.fanMost, isRead: fanRead } as const;
const natural = { group: GROUP.naturalMost, isRead: allRead } as const;

export const VENT_SUITES: readonly Suite[] = [
  ...TABLE_EXAMPLES,
  ...VENT_RULES,
  ...chimneySuites({
    ...natural,
    id: 'type-b-natural',
    printed: TYPE_B,
    kind: 'type-b-natural',
    stated: 0.21,
    at: 'Table 504.2(1), natural draught',
  }),
  ...chimneySuites({
    ...fan,
    id: 'type-b-fan',
    printed: TYPE_B,
    kind: 'type-b-fan',
    stated: 0.32,
    at: 'Table 504.2(1), fan-assisted',
  }),
  ...chimneySuites({
    ...fan,
    id: 'type-b-fan-large',
    printed: TYPE_B_LARGE,
    kind: 'type-b-fan',
    stated: 0.34,
    at: 'Table 504.2(1), 12 and 14 in, fan-assisted',
  }),
  ...chimneySuites({
    ...natural,
    id: 'connector-natural',
    printed: SINGLE_WALL_CONNECTOR,
    kind: 'single-wall-connector-natural',
    stated: 0.21,
    at: 'Table 504.2(2), natural draught',
  }),
  ...chimneySuites({
    ...fan,
    id: 'connector-fan',
    printed: SINGLE_WALL_CONNECTOR,
    kind: 'single-wall-connector-fan',
    stated: 0.34,
    at: 'Table 504.2(2), fan-assisted',
  }),
  ...chimneySuites({
    id: 'single-wall',
    printed: SINGLE_WALL,
    kind: 'single-wall-natural',
    group: 0,
    isRead: allRead,
    stated: 0.75,
    at: 'Table 504.2(5), draught hood on single-wall pipe',
  }),
];
