/** The water table held against our liquid water and boiling line. */
import { properties, quantity } from '@firstfire/engine';
import type { Band, Suite } from '../suite.ts';
import { WATER_TABLE } from './water-table.ts';

const {
  conductivityOfWater,
  densityOfWater,
  enthalpyOfWater,
  latentHeatOfWater,
  saturationPressureAt,
  specificHeatOfWater,
  vapourPressureOfWater,
  viscosityOfWater,
} = properties;

interface Column {
  readonly id: keyof typeof WATER_TABLE;
  readonly quantity: string;
  readonly band: Band;
  readonly because: string;
  /** Our figure at the temperature of the row, K; `boiling` is that of the triple point in the first row. */
  readonly of: (T: number, boiling: number) => number;
}

const POUND_PER_GALLON = quantity.POUND / quantity.US_GALLON;
const BTU_PER_POUND_FAHRENHEIT = quantity.BTU / quantity.POUND / quantity.FAHRENHEIT_STEP;
const VOLUME = 'IAPWS-IF97 holds the volume of the liquid to 0.003 % (from memory)';
const HEAT = 'IAPWS holds the specific heat of the liquid to 0.1 %';

const IF97: readonly Column[] = [
  {
    id: 'density',
    quantity: 'density, kg/m3',
    band: { relative: 3e-5 },
    because: VOLUME,
    of: densityOfWater,
  },
  {
    id: 'poundsPerGallon',
    quantity: 'density, lb/gal',
    band: { relative: 3e-5 },
    because: VOLUME,
    of: (T) => densityOfWater(T) / POUND_PER_GALLON,
  },
  {
    id: 'specificHeat',
    quantity: 'specific heat, kJ/(kg K)',
    band: { relative: 1e-3 },
    because: HEAT,
    of: (T) => specificHeatOfWater(T) / 1e3,
  },
  {
    id: 'btuPerPoundFahrenheit',
    quantity: 'specific heat, Btu/(lb °F)',
    band: { relative: 1e-3 },
    because: HEAT,
    of: (T) => specificHeatOfWater(T) / BTU_PER_POUND_FAHRENHEIT,
  },
  {
    id: 'enthalpy',
    quantity: 'enthalpy of the liquid, kJ/kg',
    band: { relative: 1e-3, absolute: 2e-3 },
    because: `${HEAT}; ours is at 0.1 MPa, 0.0013 kJ/kg below the table's pressure`,
    of: (T) => enthalpyOfWater(T) / 1e3,
  },
  {
    id: 'vapourPressure',
    quantity: 'vapour pressure, Pa',
    band: { absolute: 0.06 },
    because: 'half of the last printed digit',
    of: (_, boiling) => vapourPressureOfWater(boiling),
  },
  {
    id: 'latentHeat',
    quantity: 'latent heat, kJ/kg',
    band: { absolute: 0.5 },
    because:
      'the saturation equations of 1992 and IF97 hold the enthalpy of steam to about 0.5 kJ/kg (from memory)',
    of: (_, boiling) => latentHeatOfWater(boiling) / 1e3,
  },
  {
    id: 'viscosity',
    quantity: 'dynamic viscosity, µPa s',
    band: { relative: 1e-4 },
    because: 'five printed digits of the 2008 formulation, which itself claims 1 %',
    of: (T) => viscosityOfWater(T) * 1e6,
  },
  {
    id: 'conductivity',
    quantity: 'thermal conductivity, W/(m K)',
    band: { relative: 1e-4 },
    because: 'five printed digits of the 2011 formulation, which itself claims 1.5 %',
    of: conductivityOfWater,
  },
];

const HANDBOOK: readonly Column[] = [
  {
    id: 'handbookPressure',
    quantity: 'saturation pressure over liquid, Pa',
    band: { absolute: 0.06 },
    because: 'half of the last printed digit',
    of: saturationPressureAt,
  },
  {
    id: 'handbookInchesOfMercury',
    quantity: 'saturation pressure over liquid, inHg',
    band: { absolute: 6e-5 },
    because: 'half of the last printed digit',
    of: (T) => saturationPressureAt(T) / quantity.INCH_OF_MERCURY,
  },
];

function suite(column: Column, document: string, at: string): Suite {
  return {
    id: `properties/water-${column.id}`,
    area: 'properties',
    kind: 'stored',
    document,
    at,
    quantity: column.quantity,
    band: column.band,
    bandBecause: column.because,
    cases: WATER_TABLE[column.id].map((published, celsius) => {
      const T = celsius + quantity.ZERO_CELSIUS;
      return {
        id: `${celsius} °C`,
        published,
        computed: () => column.of(T, celsius === 0 ? properties.TRIPLE_POINT : T),
      };
    }),
  };
}

export const WATER_SUITES: readonly Suite[] = [
  ...IF97.map((column) => suite(column, 'IAPWS-IF97', '0 to 50 °C, 101.325 kPa and saturation line')),
  ...HANDBOOK.map((column) =>
    suite(column, 'ASHRAE Handbook-Fundamentals 2017', 'chapter 1, Equation 6, 0 to 50 °C'),
  ),
];
