/**
 * The chimney relation beside the cells of the code's vent tables.
 *
 * The relation gives what the draught can carry; the tables also keep the vent dry and the burner's outlet below room
 * pressure, and are lower. No source claims how near the two are: each band is the deviation that was found, which makes
 * these suites a statement and a *regression*. They are shown and never counted as agreement. Cells that were recalled
 * stand in suites of their own.
 */
import { air, quantity } from '@firstfire/engine';
import type { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { BTU, FOOT, HOUR, INCH } = quantity;
const THOUSAND_BTU_PER_HOUR = (1000 * BTU) / HOUR;

export interface TableGroup {
  readonly id: string;
  readonly printed: catalog.air.PrintedVentTable;
  readonly kind: air.VentKind;
  readonly group: number;
  /** Whether a cell of this group was read, by how its row marks it. */
  readonly isRead: (known: catalog.air.CellKnown) => boolean;
  /** Greatest stated deviation of the relation from the cells. */
  readonly stated: number;
  readonly at: string;
}

/** One suite of the cells that were read, one of those recalled; either only where it has cells. */
export function chimneySuites(table: TableGroup): readonly Suite[] {
  return [true, false].flatMap((read) => {
    const cases = casesOf(table, read);
    return cases.length === 0 ? [] : [suiteOf(table, read, cases)];
  });
}

function suiteOf(table: TableGroup, read: boolean, cases: readonly Case[]): Suite {
  return {
    id: `vent/chimney-${table.id}${read ? '' : '-recalled'}`,
    area: 'vent',
    kind: read ? 'estimate' : 'practice',
    document: 'NFPA 54 / IFGC vent tables',
    at: `${table.at}: the chimney relation beside ${read ? 'the cells read' : 'the cells from memory'}`,
    quantity: 'capacity, kBtu/h',
    band: { relative: table.stated },
    bandBecause:
      'regression: the deviation that was found; the tables also keep the vent dry and the outlet below room pressure, and are lower',
    cases,
  };
}

function casesOf({ printed, kind, group, isRead }: TableGroup, read: boolean): readonly Case[] {
  return printed.rows.flatMap(({ height, offset, known, groups }) =>
    printed.inches.flatMap((inch, column): Case[] => {
      const published = groups[group]?.[column];
      if (published === undefined || isRead(known[column] ?? 'from memory') !== read) return [];
      return [
        {
          id: `${height} ft, ${offset} ft, ${inch} in`,
          published,
          computed: () => {
            const point = { diameter: inch * INCH, height: height * FOOT, offset: offset * FOOT };
            const found = air.chimneyCapacity(air.tableChimney(kind, point));
            return found.ok ? found.value / THOUSAND_BTU_PER_HOUR : found;
          },
        },
      ];
    }),
  );
}
