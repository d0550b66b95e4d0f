/** International Fuel Gas Code 2018, Appendix A: gravity multipliers and the test gauge in the cold. */
import { gas, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const { PSI } = quantity;
const DOCUMENT = 'International Fuel Gas Code 2018';

/** Specific gravity → multiplier; the rows that the public copy shows. */
const MULTIPLIERS: Readonly<Record<string, number>> = {
  '0.35': 1.31,
  '0.40': 1.23,
  '0.45': 1.16,
  '0.50': 1.1,
  '1.00': 0.78,
  '1.10': 0.74,
  '1.20': 0.71,
  '1.30': 0.68,
};

const GRAVITY_SUITE: Suite = {
  id: 'gas/ifgc-2018-a24',
  area: 'gas',
  kind: 'published',
  document: DOCUMENT,
  at: 'Table A.2.4',
  quantity: 'capacity multiplier',
  band: { absolute: 0.0055 },
  bandBecause: 'Two printed decimals, rounded up (0.7746 to 0.78, 1.2247 to 1.23).',
  cases: Object.entries(MULTIPLIERS).map(([gravity, published]) => ({
    id: gravity,
    published,
    computed: () => gas.gravityMultiplier.kernel({ specificGravity: Number(gravity) }),
  })),
};

const fahrenheit = (f: number): number => (f + 459.67) / 1.8;

/** 20 psi at 70 °F, cooled to 40 °F, under 14.7 psia. */
const later = (): number =>
  gas.testGaugeLater.kernel({
    pressure: 20 * PSI,
    temperature: fahrenheit(70),
    laterTemperature: fahrenheit(40),
    atmosphere: 14.7 * PSI,
    laterAtmosphere: 14.7 * PSI,
  }) / PSI;

const TEST_SUITE: Suite = {
  id: 'gas/ifgc-2018-a75',
  area: 'gas',
  kind: 'published',
  document: DOCUMENT,
  at: 'Example A.7.5 (same text in the 2015 Michigan Residential Code, A.6.5)',
  quantity: 'pressure, psi',
  band: { absolute: 0.05 },
  bandBecause: 'One printed decimal; the example adds 459 to degrees Fahrenheit.',
  cases: [
    { id: 'absolute', published: 32.7, computed: () => later() + 14.7 },
    { id: 'gauge', published: 18, computed: later },
  ],
};

export const IFGC_APPENDIX_SUITES: readonly Suite[] = [GRAVITY_SUITE, TEST_SUITE];
