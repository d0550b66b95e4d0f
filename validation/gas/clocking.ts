/** Meter clocking: service pages, a training text, and a list of seconds against flow. */
import { expectOk, gas, quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';
import { CLOCKING_LIST } from './data/clocking-list.ts';
import { CFH } from './sizing-case.ts';

const { BTU, CUBIC_FOOT, HOUR, PSI, STANDARD_CUBIC_FOOT } = quantity;
const METERED_CFH = CUBIC_FOOT / HOUR;
const fahrenheit = (f: number): number => (f + 459.67) / 1.8;

const metered = (dial: number, seconds: number): number =>
  gas.meteredFlow.kernel({ dial: dial * CUBIC_FOOT, revolutions: 1, seconds }) / METERED_CFH;

/** A page that counts a metered foot as a standard one is met by an index that shows standard feet. */
const heat = (dial: number, seconds: number): number => {
  const clocked = expectOk(
    gas.clockMeter({
      dial: dial * CUBIC_FOOT,
      revolutions: 1,
      seconds,
      gaugePressure: 1740,
      atmosphere: 101_325,
      temperature: 288.71,
      compensation: 'temperature-and-pressure',
      heatingValue: (1000 * BTU) / STANDARD_CUBIC_FOOT,
    }),
  );
  return (clocked.heatInput.value / BTU) * HOUR;
};

interface Corrected {
  readonly dial: number;
  readonly seconds: number;
  readonly gauge: number;
  readonly atmosphere: number;
  readonly fahrenheitOfGas: number;
}

/** Standard ft3/h (60 °F, 14.73 psia) of a clocking under pressure. */
const standard = ({ dial, seconds, gauge, atmosphere, fahrenheitOfGas }: Corrected): number =>
  gas.standardFlow.kernel({
    flow: metered(dial, seconds) * METERED_CFH,
    pressure: (gauge + atmosphere) * PSI,
    temperature: fahrenheit(fahrenheitOfGas),
  }) / CFH;

const FOURTH: Corrected = { dial: 2, seconds: 18, gauge: 5, atmosphere: 14.35, fahrenheitOfGas: 60 };
const FIFTH: Corrected = { dial: 5, seconds: 20, gauge: 10, atmosphere: 14.55, fahrenheitOfGas: 45 };

const LIST_SUITE: Suite = {
  id: 'gas/clocking-list',
  area: 'gas',
  kind: 'published',
  document: 'Clocking list in a public forum thread, origin not stated',
  at: 'seconds for 1 ft3 against ft3/h',
  quantity: 'metered flow, ft3/h',
  band: { absolute: 0.5 },
  bandBecause: 'Whole numbers.',
  cases: Object.entries(CLOCKING_LIST).map(([seconds, published]) => ({
    id: `${seconds} s`,
    published,
    computed: () => metered(1, Number(seconds)),
  })),
  misfits: [
    { cases: ['66 s', '74 s'], because: '3600/66 is 54.5 and 3600/74 is 48.6: both are printed one low.' },
  ],
};

function flowAndHeat(
  id: string,
  dial: number,
  seconds: number,
  [flow, input]: readonly [number, number],
): Case[] {
  return [
    { id: `${id} flow, ft3/h`, published: flow, computed: () => metered(dial, seconds) },
    { id: `${id} input, Btu/h`, published: input, computed: () => heat(dial, seconds) },
  ];
}

function suite(more: Pick<Suite, 'id' | 'document' | 'at' | 'cases'> & Partial<Suite>): Suite {
  return {
    area: 'gas',
    kind: 'published',
    quantity: 'flow or input',
    band: { relative: 0.0012 },
    bandBecause: 'Two printed digits of flow (62 for 62.07), and the input from the rounded flow.',
    ...more,
  };
}

export const CLOCKING_SUITES: readonly Suite[] = [
  LIST_SUITE,
  suite({
    id: 'gas/clocking-pages',
    document: 'Service pages on clocking a gas meter',
    at: 'two half-foot dials, 29 and 22 s, 1000 Btu/ft3, metered feet taken for standard ones',
    cases: [...flowAndHeat('29 s', 0.5, 29, [62, 62_000]), ...flowAndHeat('22 s', 0.5, 22, [81.82, 81_820])],
  }),
  suite({
    id: 'gas/clocking-training',
    document: 'Gas technician training text',
    at: 'Unit 9, 1 ft3 in 40 s; Unit 11, 2 ft3 in 18 s at 5 psi, 5 ft3 in 20 s at 10 psi and 45 °F',
    band: { relative: 0.0003 },
    bandBecause:
      'Factors printed to three digits in one example; the other was made with unrounded ones (1.66 and 1.02 as printed do not give its answer).',
    cases: [
      ...flowAndHeat('1 ft3', 1, 40, [90, 90_000]),
      { id: '2 ft3 metered, ft3/h', published: 400, computed: () => metered(2, 18) },
      { id: '2 ft3 standard, ft3/h', published: 525.44, computed: () => standard(FOURTH) },
      { id: '5 ft3 metered, ft3/h', published: 900, computed: () => metered(5, 20) },
      { id: '5 ft3 standard, ft3/h', published: 1544.49, computed: () => standard(FIFTH) },
    ],
  }),
];
