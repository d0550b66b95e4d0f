/** A printed capacity table, and the cases that hold it against the code's own equation. */
import { gas, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case } from '../suite.ts';

const { BTU, FOOT, HOUR, STANDARD_CUBIC_FOOT } = quantity;

export interface CapacityPrint {
  readonly table: string;
  /** Page of the public flip-book, where it was read in one. */
  readonly page?: number;
  readonly what: string;
  readonly gas: gas.FuelName;
  /** Gauge, Pa. */
  readonly inletPressure: number;
  /** Pa. */
  readonly pressureDrop: number;
  /** Trade sizes of the columns. */
  readonly sizes: readonly string[];
  /** Length in ft → a capacity for each size from the first: ft3/h of natural gas, kBtu/h of propane. */
  readonly rows: Readonly<Record<number, readonly number[]>>;
}

/** One printed unit of capacity, standard m3/s. */
export const PRINTED_UNIT: Readonly<Record<gas.FuelName, number>> = {
  natural: STANDARD_CUBIC_FOOT / HOUR,
  propane: (1000 * BTU) / HOUR / gas.PROPANE.heatingValue,
};

export interface Cell {
  readonly id: string;
  readonly published: number;
  readonly carrier: gas.BoreCarrier;
  /** m. */
  readonly length: number;
}

/** The cells of a table, named `60 ft 3/4`. */
export function cells(print: CapacityPrint, pipe: catalog.gas.Pipe): Cell[] {
  return Object.entries(print.rows).flatMap(([feet, capacities]) =>
    capacities.map((published, column): Cell => {
      const size = print.sizes[column] ?? '';
      const found = catalog.gas.pipeSize(pipe, size);
      if (found === undefined) throw new Error(`${print.table}: no size ${size} in the catalogue`);
      return {
        id: `${feet} ft ${size}`,
        published,
        carrier: { type: 'bore', insideDiameter: found.insideDiameter },
        length: Number(feet) * FOOT,
      };
    }),
  );
}

/** Each cell against the equation that the code prints for its inlet pressure. */
export function equationCases(print: CapacityPrint, pipe: catalog.gas.Pipe): Case[] {
  const fuel = print.gas === 'natural' ? gas.NATURAL_GAS : gas.PROPANE;
  const { cr, y } = gas.codeFactors(fuel);
  return cells(print, pipe).map(({ id, published, carrier, length }) => ({
    id,
    published,
    computed: () => {
      const run = { insideDiameter: carrier.insideDiameter, length, pressureDrop: print.pressureDrop, cr };
      const { inletPressure } = print;
      const flow =
        gas.codeEquation(inletPressure) === 'low'
          ? gas.lowPressureFlow.kernel(run)
          : gas.highPressureFlow.kernel({ ...run, inletPressure, y });
      return flow / PRINTED_UNIT[print.gas];
    },
  }));
}
