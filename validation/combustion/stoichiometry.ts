/**
 * Flue gas of methane and propane in dry air: a table computed apart from this project from the balanced reactions and
 * the ASHRAE saturation equation. It stands in no book, and is shown, not counted.
 */
import { combustion, evaluate } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

type Row = readonly [
  excess: number,
  oxygen: number,
  carbonDioxide: number,
  vapour: number,
  dewPoint: number,
  air: number,
  flue: number,
];

/** Excess air, O2 dry, CO2 dry, H2O wet (all %), dew point (°C), volumes of air and of wet flue gas for one of fuel. */
const METHANE: readonly Row[] = [
  [0, 0, 11.73, 19, 59.2, 9.52, 10.52],
  [5, 1.11, 11.11, 18.18, 58.3, 10, 11],
  [9.5, 2.02, 10.61, 17.5, 57.5, 10.43, 11.43],
  [10, 2.11, 10.55, 17.43, 57.4, 10.48, 11.48],
  [15, 3.01, 10.05, 16.73, 56.5, 10.95, 11.95],
  [20, 3.84, 9.59, 16.09, 55.7, 11.43, 12.43],
  [28.1, 5.02, 8.93, 15.15, 54.5, 12.2, 13.2],
  [30, 5.27, 8.79, 14.95, 54.2, 12.38, 13.38],
  [40, 6.49, 8.11, 13.95, 52.8, 13.33, 14.33],
  [44.9, 7.02, 7.81, 13.51, 52.1, 13.8, 14.8],
  [50, 7.53, 7.53, 13.08, 51.4, 14.29, 15.29],
  [60, 8.43, 7.02, 12.32, 50.2, 15.24, 16.24],
  [81.6, 10.02, 6.14, 10.93, 47.8, 17.3, 18.3],
  [100, 11.08, 5.54, 9.98, 46, 19.05, 20.05],
  [150, 13.15, 4.38, 8.06, 41.9, 23.81, 24.81],
  [200, 14.51, 3.63, 6.76, 38.6, 28.57, 29.57],
];

const PROPANE: readonly Row[] = [
  [0, 0, 13.76, 15.5, 54.9, 23.81, 25.81],
  [5, 1.09, 13.04, 14.81, 54, 25, 27],
  [9.5, 1.97, 12.46, 14.25, 53.2, 26.07, 28.07],
  [10, 2.07, 12.4, 14.19, 53.1, 26.19, 28.19],
  [15, 2.95, 11.82, 13.61, 52.2, 27.38, 29.38],
  [20, 3.76, 11.29, 13.08, 51.4, 28.57, 30.57],
  [28.1, 4.93, 10.53, 12.31, 50.2, 30.5, 32.5],
  [30, 5.18, 10.36, 12.14, 49.9, 30.95, 32.95],
  [40, 6.38, 9.57, 11.32, 48.5, 33.33, 35.33],
  [44.9, 6.91, 9.23, 10.96, 47.9, 34.5, 36.5],
  [50, 7.42, 8.9, 10.61, 47.2, 35.71, 37.71],
  [60, 8.31, 8.31, 9.98, 46, 38.1, 40.1],
  [81.6, 9.89, 7.27, 8.84, 43.7, 43.24, 45.24],
  [100, 10.96, 6.58, 8.06, 41.9, 47.62, 49.62],
  [150, 13.04, 5.22, 6.5, 37.9, 59.52, 61.52],
  [200, 14.4, 4.32, 5.45, 34.6, 71.43, 73.43],
];

const COLUMNS = [
  'O2 dry %',
  'CO2 dry %',
  'H2O wet %',
  'dew point °C',
  'air volumes',
  'flue volumes',
] as const;

function computed(fuel: combustion.CombustionFuel, excess: number, column: number): number {
  const excessAir = excess / 100;
  const { airDemand, dryFlue, carbon, vapour } = combustion.flameBalance(fuel);
  const of = (found: ReturnType<typeof evaluate>): number => (found.ok ? found.value : Number.NaN);
  switch (column) {
    case 0:
      return 100 * of(evaluate(combustion.flueOxygen, { airDemand, dryFlue, excessAir }));
    case 1:
      return 100 * of(evaluate(combustion.flueCarbonDioxide, { airDemand, dryFlue, carbon, excessAir }));
    case 2:
      return 100 * of(evaluate(combustion.flueVapour, { airDemand, dryFlue, vapour, excessAir }));
    case 3:
      return of(combustion.flueDewPoint(fuel, { excessAir, airPressure: 101_325 })) - 273.15;
    case 4:
      return airDemand * (1 + excessAir);
    default:
      return dryFlue + airDemand * excessAir + vapour;
  }
}

function casesOf(name: string, fuel: combustion.CombustionFuel, rows: readonly Row[]): readonly Case[] {
  return rows.flatMap(([excess, ...values]) =>
    values.map((published, column) => ({
      id: `${name}, ${excess} % excess air, ${COLUMNS[column]}`,
      published,
      computed: () => computed(fuel, excess, column),
    })),
  );
}

export const STOICHIOMETRY: Suite = {
  id: 'combustion/stoichiometry',
  area: 'combustion',
  kind: 'practice',
  document: 'Balanced reactions of methane and propane in dry air, computed apart',
  at: '0 to 200 % excess air',
  quantity: 'as each case says',
  band: { relative: 0.004, absolute: 0.051 },
  bandBecause:
    'dew points to a tenth, the rest to a hundredth; its air volumes follow from 21 % oxygen in air though its heading says 20.95 %, which moves volumes and carbon dioxide by 0.3 %',
  cases: [
    ...casesOf('methane', combustion.COMBUSTION_FUELS.natural, METHANE),
    ...casesOf('propane', combustion.COMBUSTION_FUELS.propane, PROPANE),
  ],
};
