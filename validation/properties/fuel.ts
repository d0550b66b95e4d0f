/** Fuel gases and their carbon: a printed fuel table and the US emission factors against our molar data. */
import { expectOk, properties, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const { BTU, CUBIC_FOOT, POUND, ZERO_CELSIUS } = quantity;

/** Btu/ft3 gross and net, Btu/lb gross and net, gravity, lb/ft3: Menon, Piping Calculations Manual, fuel gas table. */
const TABLE = {
  methane: [1011, 910, 23_811, 21_433, 0.55, 0.042],
  ethane: [1783, 1630, 22_198, 20_295, 1.06, 0.06],
  propane: [2572, 2365, 21_500, 19_770, 1.52, 0.116],
  butane: [3225, 2977, 21_640, 19_976, 1.95, 0.149],
} as const;
type Gas = keyof typeof TABLE;
const GASES = Object.keys(TABLE) as Gas[];

/** A cubic foot at 60 °F and 14.696 psia in standard cubic metres; the table names no base. */
const FOOT_60F = CUBIC_FOOT * ((15 + ZERO_CELSIUS) / ((60 + 459.67) / 1.8));
const PER_POUND = BTU / POUND;

const of = (gas: Gas) => expectOk(properties.gasMixture({ [gas]: 1 }));

function ours(gas: Gas): readonly number[] {
  const mix = of(gas);
  return [
    (mix.grossHeatingValue * FOOT_60F) / BTU,
    (mix.netHeatingValue * FOOT_60F) / BTU,
    mix.grossHeatingValueByMass / PER_POUND,
    mix.netHeatingValueByMass / PER_POUND,
    mix.specificGravity,
    (mix.density * FOOT_60F) / POUND,
  ];
}

const cases = (...columns: readonly (readonly [string, number])[]) =>
  GASES.flatMap((gas) =>
    columns.map(([name, at]) => ({
      id: `${gas}, ${name}`,
      published: TABLE[gas][at]!,
      computed: () => ours(gas)[at]!,
    })),
  );

const MENON = {
  area: 'properties',
  kind: 'published',
  document: 'Menon, Piping Calculations Manual',
  at: 'fuel gas and heating values, as copied at engineersedge.com',
} as const;

const THIN_BUTANE =
  'the butane row is consistent in itself but is a gas of gravity 1.95; n-butane as a real gas has 2.08.';

const EPA = {
  area: 'properties',
  kind: 'published',
  document: '40 CFR 98',
} as const;

/** kg CO2, CH4 and N2O a million Btu. */
const FACTORS = {
  natural: [53.06, 0.001, 0.0001],
  propane: [62.87, 0.003, 0.0006],
  lpg: [61.71, 0.003, 0.0006],
  'propane-gas': [61.46, 0.003, 0.0006],
  butane: [64.77, 0.003, 0.0006],
} as const;

const MILLION_BTU = 1e6 * BTU;

export const FUEL_SUITES: readonly Suite[] = [
  {
    ...MENON,
    id: 'properties/menon-heat-by-volume',
    quantity: 'heating value, Btu/ft3',
    band: { relative: 0.01 },
    bandBecause: 'no base is printed: ideal or real gas, 14.696 or 14.73 psia differ by up to 1 %',
    cases: cases(['gross', 0], ['net', 1]),
    misfits: [{ cases: ['butane, gross', 'butane, net'], because: THIN_BUTANE }],
  },
  {
    ...MENON,
    id: 'properties/menon-heat-by-mass',
    quantity: 'heating value, Btu/lb',
    band: { relative: 0.01 },
    bandBecause: 'tables of the heat of combustion of the pure gases differ by up to 1 %',
    cases: cases(['gross', 2], ['net', 3]),
    misfits: [
      {
        cases: ['butane, gross', 'butane, net'],
        because: 'the table gives butane more heat a pound than propane, which no hydrocarbon series does.',
      },
    ],
  },
  {
    ...MENON,
    id: 'properties/menon-gravity',
    quantity: 'specific gravity',
    band: { absolute: 0.006, relative: 0.021 },
    bandBecause: 'two decimals; ideal and real gas differ by 2 % for propane',
    cases: cases(['gravity', 4]),
    misfits: [{ cases: ['butane, gravity'], because: THIN_BUTANE }],
  },
  {
    ...MENON,
    id: 'properties/menon-density',
    quantity: 'density, lb/ft3',
    band: { absolute: 0.0006, relative: 0.022 },
    bandBecause: 'three decimals; ideal and real gas differ by 2 % for propane',
    cases: cases(['density', 5]),
    misfits: [
      { cases: ['butane, density'], because: THIN_BUTANE },
      {
        cases: ['ethane, density'],
        because: 'printed 0.060, but its own gravity of 1.06 makes 0.081: a misprint for 0.080.',
      },
    ],
  },
  {
    ...EPA,
    id: 'properties/epa-carbon',
    at: 'Table C-1, carbon dioxide of pure gases from their formula',
    quantity: 'kg CO2 a million Btu',
    band: { relative: 0.005 },
    bandBecause: 'the factors are of commercial gases, whose heavier parts add up to 0.5 %',
    cases: [
      { id: 'propane', published: 62.87, computed: () => of('propane').carbonDioxide * MILLION_BTU },
      { id: 'propane gas', published: 61.46, computed: () => of('propane').carbonDioxide * MILLION_BTU },
      { id: 'butane', published: 64.77, computed: () => of('butane').carbonDioxide * MILLION_BTU },
    ],
    misfits: [
      {
        cases: ['propane gas'],
        because:
          'the row of the gas lies 2 % under that of the liquid, though both are C3H8; the formula gives the latter.',
      },
    ],
  },
  {
    ...EPA,
    id: 'properties/epa-propane-heat',
    at: 'Table C-1, propane gas, high heat value',
    quantity: 'Btu a standard cubic foot, ideal gas at 60 °F and 14.696 psia',
    band: { relative: 2e-4 },
    bandBecause: 'four printed digits',
    cases: [
      {
        id: 'propane gas',
        published: 2516,
        computed: () => (of('propane').grossHeatingValue * of('propane').compressionFactor * FOOT_60F) / BTU,
      },
    ],
  },
  {
    ...EPA,
    id: 'properties/epa-factors',
    carried: true,
    at: 'Tables C-1 and C-2, as carried',
    quantity: 'kg a million Btu',
    band: { relative: 1e-9 },
    bandBecause: 'carried figures: only the conversion can be wrong',
    cases: (Object.keys(FACTORS) as (keyof typeof FACTORS)[]).flatMap((fuel) => {
      const factor = properties.EMISSION_FACTORS[fuel];
      const [co2, ch4, n2o] = FACTORS[fuel];
      return [
        { id: `${fuel}, CO2`, published: co2, computed: () => factor.carbonDioxide * MILLION_BTU },
        { id: `${fuel}, CH4`, published: ch4, computed: () => factor.methane * MILLION_BTU },
        { id: `${fuel}, N2O`, published: n2o, computed: () => factor.nitrousOxide * MILLION_BTU },
      ];
    }),
  },
];
