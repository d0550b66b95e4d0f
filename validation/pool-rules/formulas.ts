/** Sums of the pool trade as trade pages and codes print them. */
import { expectOk, quantity, water } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { BTU, FAHRENHEIT_STEP, FOOT, HOUR, INCH_OF_MERCURY, MINUTE, PSI, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;
const at = (fahrenheit: number) => expectOk(water.waterAt((fahrenheit + 459.67) * FAHRENHEIT_STEP));
const COLD = at(60);

/* Btu/h = 500·gpm·ΔT. */

const HEATED: readonly (readonly [gpm: number, rise: number])[] = [
  [8, 20],
  [16, 10],
  [32, 5],
  [80, 2],
];

const HEAT_FLOW: readonly Case[] = [
  ...HEATED.map(([gpm, rise]) => ({
    id: `${gpm} gpm, ${rise} °F, Btu/h`,
    published: 80_000,
    computed: () =>
      (water.heatCarried.kernel({ ...COLD, rise: rise * FAHRENHEIT_STEP, flow: gpm * GPM }) / BTU) * HOUR,
  })),
  {
    id: '100,000 Btu/h, 20 °F, gpm',
    published: 10,
    computed: () =>
      water.flowForRise.kernel({
        ...COLD,
        heat: (100_000 * BTU) / HOUR,
        rise: 20 * FAHRENHEIT_STEP,
      }) / GPM,
  },
];

/* Columns of water. */

const COLUMNS: readonly Case[] = [
  {
    id: '100 ft of water, psi',
    published: 43.33,
    computed: () => water.staticPressure.kernel({ height: 100 * FOOT, density: COLD.density }) / PSI,
  },
  {
    id: '1 psi, ft of water',
    published: 2.307,
    computed: () => water.staticHeight.kernel({ pressure: PSI, density: COLD.density }) / FOOT,
  },
];

/* Turnover and the residential limit. */

const TURNOVERS: readonly (readonly [gallons: number, hours: number, gpm: number])[] = [
  [20_000, 6, 55.556],
  [15_000, 8, 31.25],
  [500, 0.5, 16.667],
  [120_000, 6, 333.333],
];

const TURNOVER_CASES: readonly Case[] = TURNOVERS.map(([gallons, hours, gpm]) => ({
  id: `${gallons} gal in ${hours} h, gpm`,
  published: gpm,
  computed: () => water.flowForTurnover.kernel({ volume: gallons * US_GALLON, time: hours * HOUR }) / GPM,
}));

const RESIDENTIAL: readonly (readonly [gallons: number, gpm: number])[] = [
  [10_700, 36],
  [12_960, 36],
  [20_000, 55.556],
];

const RESIDENTIAL_CASES: readonly Case[] = RESIDENTIAL.map(([gallons, gpm]) => ({
  id: `residential limit, ${gallons} gal, gpm`,
  published: gpm,
  computed: () => catalog.water.residentialFiltrationFlow(gallons * US_GALLON) / GPM,
}));

/* Gauges, affinity, power: worked out from the rule as it is remembered. */

const DENSITY = COLD.density;
const REMEMBERED: readonly Case[] = [
  {
    id: 'total head, 18 psi and 6 inHg, ft',
    published: 48.38,
    computed: () =>
      water.totalHead.kernel({
        dischargePressure: 18 * PSI,
        suctionVacuum: 6 * INCH_OF_MERCURY,
        gaugeHeight: 0,
        suctionVelocity: 0,
        dischargeVelocity: 0,
        density: DENSITY,
      }) / FOOT,
  },
  {
    id: 'half speed, gpm of 80',
    published: 40,
    computed: () => water.affinityFlow.kernel({ flow: 80, speedRatio: 1725 / 3450 }),
  },
  {
    id: 'half speed, ft of 60',
    published: 15,
    computed: () => water.affinityHead.kernel({ head: 60, speedRatio: 1725 / 3450 }),
  },
  {
    id: 'half speed, W of 1600',
    published: 200,
    computed: () => water.affinityPower.kernel({ power: 1600, speedRatio: 1725 / 3450 }),
  },
  {
    id: 'one gpm and one ft, W',
    published: 0.18859,
    computed: () => water.hydraulicPower.kernel({ flow: GPM, head: FOOT, density: DENSITY }),
  },
];

export const FORMULAS: readonly Suite[] = [
  {
    id: 'pool-rules/heat-flow',
    area: 'pool-rules',
    kind: 'published',
    document: 'ACHR News, Heat transfer: nature versus math',
    at: 'Btu/h = 500·gpm·ΔT, worked examples',
    quantity: 'as named in each case',
    band: { relative: 0.003 },
    bandBecause: 'The 500 is 499.8 rounded, for water at 60 °F.',
    cases: HEAT_FLOW,
  },
  {
    id: 'pool-rules/columns-of-water',
    area: 'pool-rules',
    kind: 'published',
    document: 'EPANET test suite; engineeringtoolbox.com',
    at: '100 ft = 43.33 psi; 1 psi = 2.307 ft',
    quantity: 'as named in each case',
    band: { relative: 0.001 },
    bandBecause: 'Both take water of 1000 kg/m3; at 60 °F it is 999.',
    cases: COLUMNS,
  },
  {
    id: 'pool-rules/turnover',
    area: 'pool-rules',
    kind: 'stored',
    document: 'Wisconsin SPS 390.14 and California Energy Code 150.0(p)',
    at: 'the rules, worked out outside the project',
    quantity: 'flow, gpm',
    band: { relative: 3e-5 },
    bandBecause: 'Five digits.',
    cases: [...TURNOVER_CASES, ...RESIDENTIAL_CASES],
  },
  {
    id: 'pool-rules/remembered',
    area: 'pool-rules',
    kind: 'practice',
    document: 'Trade rules for gauges, pump speed and power',
    at: 'from memory',
    quantity: 'as named in each case',
    band: { relative: 0.002 },
    bandBecause: 'Three to four digits, for cold water.',
    cases: REMEMBERED,
  },
];
