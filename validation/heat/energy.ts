/** Worked figures of heat in water: heating it and evaporating it. */
import { properties, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const { BTU, INCH, POUND, SQUARE_FOOT, THERM, US_GALLON } = quantity;
const fahrenheit = (t: number) => (t + 459.67) / 1.8;

/** Heat to warm a volume (gal) from one temperature to another (°F), filled at the first, Btu. */
function warming(gallons: number, from: number, to: number): number {
  const mass = gallons * US_GALLON * properties.densityOfWater(fahrenheit(from));
  return (
    (mass * (properties.enthalpyOfWater(fahrenheit(to)) - properties.enthalpyOfWater(fahrenheit(from)))) / BTU
  );
}

/** Heat to evaporate a volume (m3) of water at 80 °F, J. */
function evaporating(volume: number): number {
  const T = fahrenheit(80);
  return volume * properties.densityOfWater(T) * properties.latentHeatOfWater(T);
}

const INCH_OF_POOL = 1000 * SQUARE_FOOT * INCH;
const DOE = {
  area: 'heat',
  kind: 'published',
  document: 'US DOE EERE fact sheet, Heat Pump Swimming Pool Heaters (2004)',
} as const;

export const ENERGY_SUITES: readonly Suite[] = [
  {
    id: 'heat/operator-warming',
    area: 'heat',
    kind: 'published',
    document: 'Certified pool operator course arithmetic',
    at: '8.33·gal·ΔT, spa of 1100 gal from 94 °F to 102 °F',
    quantity: 'Btu',
    band: { relative: 0.01 },
    bandBecause:
      'the course takes 8.33 lb a gallon and 1 Btu/(lb °F) at any temperature; at 98 °F both are 0.6 % less',
    cases: [{ id: 'spa of 1100 gal', published: 73_304, computed: () => warming(1100, 94, 102) }],
  },
  {
    id: 'heat/operator-gallon',
    area: 'heat',
    kind: 'published',
    document: 'Certified pool operator course arithmetic',
    at: 'a gallon weighs 8.33 lb',
    quantity: 'lb, at 60 °F',
    band: { absolute: 0.01 },
    bandBecause: 'the last printed digit; no temperature is given',
    cases: [
      {
        id: 'a gallon',
        published: 8.33,
        computed: () => (properties.densityOfWater(fahrenheit(60)) * US_GALLON) / POUND,
      },
    ],
  },
  {
    ...DOE,
    id: 'heat/doe-gallon',
    at: 'heat to evaporate a gallon, “more than 8500 Btu”',
    quantity: 'Btu',
    band: { relative: 0.05 },
    bandBecause: 'printed as “more than”, to the next round five hundred',
    cases: [{ id: 'a gallon at 80 °F', published: 8500, computed: () => evaporating(US_GALLON) / BTU }],
  },
  {
    ...DOE,
    id: 'heat/doe-inch-water',
    at: 'an inch from 1000 ft2 is 625 gal',
    quantity: 'gal',
    band: { absolute: 2.5 },
    bandBecause: 'rounded to five gallons',
    cases: [{ id: 'an inch', published: 625, computed: () => INCH_OF_POOL / US_GALLON }],
  },
  {
    ...DOE,
    id: 'heat/doe-inch-heat',
    at: 'an inch from 1000 ft2 takes “more than 50 therms”',
    quantity: 'therm',
    band: { relative: 0.1 },
    bandBecause: 'printed as “more than”, to the next round five',
    cases: [{ id: 'an inch at 80 °F', published: 50, computed: () => evaporating(INCH_OF_POOL) / THERM }],
  },
];
