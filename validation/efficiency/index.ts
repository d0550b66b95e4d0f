/** The US test procedure of pool heaters: two cases computed apart, by formulas from memory. */
import { efficiency, evaluate, expectOk, quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { BTU, HOUR } = quantity;
const btu = (perHour: number): number => (perHour * BTU) / HOUR;

interface Heater {
  readonly id: string;
  readonly input: number;
  readonly thermal: number;
  readonly electric: number;
  readonly pilot: number;
  readonly standby: number;
  readonly off: number;
  readonly published: readonly [fuel: number, electricity: number, output: number, integrated: number];
}

const HEATERS: readonly Heater[] = [
  {
    id: 'without a pilot',
    input: 250_000,
    thermal: 0.82,
    electric: 700,
    pilot: 0,
    standby: 8,
    off: 5,
    published: [26_000_000, 265_100, 21_379_696, 81.4],
  },
  {
    id: 'with a pilot',
    input: 150_000,
    thermal: 0.8,
    electric: 0,
    pilot: 1000,
    standby: 0,
    off: 0,
    published: [24_256_000, 0, 12_480_000, 51.45],
  },
];

const NAMES = [
  'fuel, Btu',
  'electricity, Btu',
  'heat into the water, Btu',
  'integrated efficiency, %',
] as const;

function year(x: Heater): readonly number[] {
  const heatInput = btu(x.input);
  const burnerPower = btu(x.electric);
  // The pilot case burns it all the year round.
  const fuel = expectOk(
    evaluate(efficiency.annualFuel, { heatInput, pilot: btu(x.pilot), offHeat: btu(x.pilot) }),
  );
  const electricity = expectOk(
    evaluate(efficiency.annualElectricity, { burnerPower, standbyPower: x.standby, offPower: x.off }),
  );
  const output = expectOk(
    evaluate(efficiency.annualOutput, { heatInput, burnerPower, thermalEfficiency: x.thermal }),
  );
  const integrated = expectOk(evaluate(efficiency.integratedEfficiency, { output, fuel, electricity }));
  return [fuel / BTU, electricity / BTU, output / BTU, 100 * integrated];
}

const computedCases: Suite = {
  id: 'efficiency/appendix-p-cases',
  area: 'efficiency',
  kind: 'practice',
  document: '10 CFR 430 Appendix P (from memory), two cases computed apart',
  at: 'heaters of 250,000 and 150,000 Btu/h',
  quantity: 'as each case says',
  band: { relative: 1e-4, absolute: 1 },
  bandBecause: 'a watt counts as 3.412 Btu/h there',
  cases: HEATERS.flatMap((heater) =>
    heater.published.map(
      (published, k): Case => ({
        id: `${heater.id}: ${NAMES[k]}`,
        published,
        computed: () => year(heater)[k] ?? Number.NaN,
      }),
    ),
  ),
};

/** What the minimum says at two sizes, by its own equation in its own units. */
const minima: Suite = {
  id: 'efficiency/minima',
  area: 'efficiency',
  kind: 'practice',
  document: '10 CFR 430.32(k) and 88 FR 34624 (from memory)',
  at: 'thermal efficiency of 1990 and 2013; integrated efficiency of 2028',
  quantity: '%',
  band: { relative: 1e-9 },
  bandBecause: 'the same equation in other units',
  cases: [
    {
      id: 'thermal, 1990',
      published: 78,
      computed: () => 100 * (efficiency.THERMAL_MINIMA[0]?.thermalEfficiency ?? 0),
    },
    {
      id: 'thermal, 2013',
      published: 82,
      computed: () => 100 * (efficiency.THERMAL_MINIMA[1]?.thermalEfficiency ?? 0),
    },
    {
      id: 'gas, 250,000 Btu/h',
      published: (84 * (250_000 + 491)) / (250_000 + 2536),
      computed: () => 100 * expectOk(evaluate(efficiency.gasMinimum, { heatInput: btu(250_000) })),
    },
    {
      id: 'electric, 100,000 Btu/h',
      published: (600 * 100_000) / (100_000 + 1619),
      computed: () => 100 * expectOk(evaluate(efficiency.electricMinimum, { heatOutput: btu(100_000) })),
    },
  ],
};

export const EFFICIENCY_SUITES: readonly Suite[] = [computedCases, minima];
