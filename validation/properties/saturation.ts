/** Single figures of the saturation line as the releases and the handbook print them. */
import { properties, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const { boilingTemperatureOfWater, latentHeatOfWater, saturationPressureAt, vapourPressureOfWater } =
  properties;

/** K and MPa: IAPWS R7-97(2012), Table 35. */
const PRESSURES = [
  [300, 0.353658941e-2],
  [500, 0.263889776e1],
  [600, 0.123443146e2],
] as const;
/** MPa and K: the same, Table 36. */
const TEMPERATURES = [
  [0.1, 0.372755919e3],
  [1, 0.453035632e3],
  [10, 0.584149488e3],
] as const;
/** °C and Pa: ASHRAE Handbook-Fundamentals 2017, chapter 1, Table 3. */
const HANDBOOK = [
  [-20, 103.24],
  [-5, 401.74],
  [5, 872.6],
  [25, 3169.7],
  [50, 12_351.3],
  [100, 101_418],
  [150, 476_101.4],
] as const;
/** °F and psi: the same table in the handbook's inch-pound edition. */
const HANDBOOK_POUNDS = [
  [-4, 0.014974],
  [23, 0.058268],
  [41, 0.12656],
  [77, 0.45973],
  [122, 1.7914],
  [212, 14.7094],
  [300, 67.0206],
] as const;
/** °C and kg of water a kg of dry air, saturated at 101.325 kPa: the same chapter, Table 2. */
const HANDBOOK_AIR = [
  [-20, 0.000_637_3],
  [-5, 0.002_486_3],
  [5, 0.005_425],
  [25, 0.020_173],
  [50, 0.086_863],
] as const;

const RELEASE = {
  area: 'properties',
  kind: 'published',
  document: 'IAPWS R7-97(2012)',
  bandBecause: 'half of the last printed digit',
} as const;

export const SATURATION_SUITES: readonly Suite[] = [
  {
    ...RELEASE,
    id: 'properties/if97-table-35',
    at: 'Table 35',
    quantity: 'vapour pressure, MPa',
    band: { relative: 2e-9 },
    cases: PRESSURES.map(([T, published]) => ({
      id: `${T} K`,
      published,
      computed: () => vapourPressureOfWater(T) / 1e6,
    })),
  },
  {
    ...RELEASE,
    id: 'properties/if97-table-36',
    at: 'Table 36',
    quantity: 'boiling temperature, K',
    band: { relative: 2e-9 },
    cases: TEMPERATURES.map(([pressure, published]) => ({
      id: `${pressure} MPa`,
      published,
      computed: () => boilingTemperatureOfWater(pressure * 1e6),
    })),
  },
  {
    id: 'properties/handbook-saturation',
    area: 'properties',
    kind: 'published',
    document: 'ASHRAE Handbook-Fundamentals 2017',
    at: 'chapter 1, Table 3, as quoted in the tests of an open library',
    quantity: 'saturation pressure, Pa',
    band: { relative: 3e-4 },
    bandBecause: 'the accuracy the table claims against its own equation, 300 ppm',
    cases: HANDBOOK.map(([celsius, published]) => ({
      id: `${celsius} °C`,
      published,
      computed: () => saturationPressureAt(celsius + quantity.ZERO_CELSIUS),
    })),
  },
  {
    id: 'properties/handbook-saturation-pounds',
    area: 'properties',
    kind: 'published',
    document: 'ASHRAE Handbook-Fundamentals 2017',
    at: 'chapter 1, Table 3, inch-pound edition, as quoted in the tests of an open library',
    quantity: 'saturation pressure, psi',
    band: { relative: 3e-4 },
    bandBecause: 'the accuracy the table claims against its own equation, 300 ppm',
    cases: HANDBOOK_POUNDS.map(([fahrenheit, published]) => ({
      id: `${fahrenheit} °F`,
      published,
      computed: () => saturationPressureAt((fahrenheit + 459.67) / 1.8) / quantity.PSI,
    })),
  },
  {
    id: 'properties/handbook-saturated-air',
    area: 'properties',
    kind: 'published',
    document: 'ASHRAE Handbook-Fundamentals 2017',
    at: 'chapter 1, Table 2, as quoted in the tests of an open library',
    quantity: 'humidity ratio of saturated air at 101.325 kPa, kg/kg',
    band: { relative: 0.007 },
    bandBecause:
      'the handbook gives its perfect-gas relations 0.7 % of error from −50 to 50 °C (that sentence from memory)',
    cases: HANDBOOK_AIR.map(([celsius, published]) => ({
      id: `${celsius} °C`,
      published,
      computed: () =>
        properties.humidityRatioAt(saturationPressureAt(celsius + quantity.ZERO_CELSIUS), 101_325),
    })),
  },
  {
    id: 'properties/doe-latent-heat',
    area: 'properties',
    kind: 'published',
    document: 'US DOE Energy Saver',
    at: 'swimming pool covers, as quoted at serviceindustrynews.net, 30 September 2022',
    quantity: 'heat to evaporate a pound of water at 80 °F, Btu',
    band: { absolute: 0.5 },
    bandBecause: 'printed to one Btu',
    cases: [
      {
        id: '80 °F',
        published: 1048,
        computed: () => latentHeatOfWater((80 + 459.67) / 1.8) / (quantity.BTU / quantity.POUND),
      },
    ],
  },
];
