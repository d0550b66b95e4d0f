/** Saturation index: printed factors, worked examples, and the share of cyanuric acid. */
import { chemistry, evaluate } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const NEW_YORK = '10 NYCRR 6-1.30';
const kelvin = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8;

interface Sample {
  readonly ph: number;
  readonly fahrenheit: number;
  readonly calcium: number;
  readonly alkalinity: number;
}

function index(variant: chemistry.IndexVariant, x: Sample, solids = 1000) {
  return chemistry.saturationIndex(variant, {
    ph: x.ph,
    temperature: kelvin(x.fahrenheit),
    calcium: x.calcium / 1000,
    totalAlkalinity: x.alkalinity / 1000,
    dissolvedSolids: solids / 1000,
    cyanuricAcid: 0,
  });
}

function plain(variant: chemistry.IndexVariant, x: Sample, solids?: number): number {
  const found = index(variant, x, solids);
  return found.ok ? found.value : Number.NaN;
}

/** Rows whose other factors are known: a difference of two indices is a difference of one factor. */
const ANY: Sample = { ph: 7.5, fahrenheit: 76, calcium: 100, alkalinity: 100 };
const atAny = plain('table', ANY);

const TEMPERATURES: readonly (readonly [fahrenheit: number, factor: number])[] = [
  [32, 0.0],
  [37, 0.1],
  [46, 0.2],
  [53, 0.3],
  [60, 0.4],
  [66, 0.5],
  [76, 0.6],
  [84, 0.7],
  [94, 0.8],
  [105, 0.9],
  [128, 1.0],
];

const CARBONATES: readonly (readonly [milligrams: number, hardness: number, alkalinity: number])[] = [
  [5, 0.3, 0.7],
  [25, 1.0, 1.4],
  [50, 1.3, 1.7],
  [75, 1.5, 1.9],
  [100, 1.6, 2.0],
  [150, 1.8, 2.2],
  [200, 1.9, 2.3],
  [300, 2.1, 2.5],
  [400, 2.2, 2.6],
  [800, 2.5, 2.9],
  [1000, 2.6, 3.0],
];

/** The card read through the index: pH, and all factors but one, taken off again. */
const card: Suite = {
  id: 'chemistry/nycrr-factors',
  carried: true,
  area: 'chemistry',
  kind: 'published',
  document: NEW_YORK,
  at: 'factor table; temperature also in Administrative Rules of Montana 37.115, Table 6',
  quantity: 'factor, from the change of the index against pH 7.5, 76 °F, 100 and 100 mg/L (0.6, 1.6, 2.0)',
  band: { absolute: 1e-6 },
  bandBecause: 'the table itself is followed',
  cases: [
    ...TEMPERATURES.map(
      ([fahrenheit, factor]): Case => ({
        id: `${fahrenheit} °F`,
        published: factor,
        computed: () => 0.6 + plain('table', { ...ANY, fahrenheit }) - atAny,
      }),
    ),
    ...CARBONATES.map(
      ([milligrams, factor]): Case => ({
        id: `calcium ${milligrams}`,
        published: factor,
        computed: () => 1.6 + plain('table', { ...ANY, calcium: milligrams }) - atAny,
      }),
    ),
    ...CARBONATES.map(
      ([milligrams, , factor]): Case => ({
        id: `alkalinity ${milligrams}`,
        published: factor,
        computed: () => 2.0 + plain('table', { ...ANY, alkalinity: milligrams }) - atAny,
      }),
    ),
  ],
};

/** The printed columns against the logarithms they round, which the simplified form uses. */
const logarithms: Suite = {
  id: 'chemistry/nycrr-factors-as-logarithms',
  area: 'chemistry',
  kind: 'published',
  document: NEW_YORK,
  at: 'columns of calcium hardness and alkalinity',
  quantity: 'factor, from the change of the index by the simplified form against 100 and 100 mg/L',
  band: { absolute: 0.0501 },
  bandBecause: 'printed to 0.1',
  cases: CARBONATES.flatMap(([milligrams, hardness, alkalinity]): Case[] => {
    const base = { ...ANY, calcium: 100, alkalinity: 100 };
    return [
      {
        id: `calcium ${milligrams}`,
        published: hardness,
        computed: () => 1.6 + plain('carrier', { ...base, calcium: milligrams }) - plain('carrier', base),
      },
      {
        id: `alkalinity ${milligrams}`,
        published: alkalinity,
        computed: () => 2 + plain('carrier', { ...base, alkalinity: milligrams }) - plain('carrier', base),
      },
    ];
  }),
};

const solids: Suite = {
  id: 'chemistry/montana-solids-constant',
  carried: true,
  area: 'chemistry',
  kind: 'published',
  document: 'Administrative Rules of Montana 37.115',
  at: 'Tables 6 and 7, constant of the dissolved solids',
  quantity: 'constant',
  band: { absolute: 1e-9 },
  bandBecause: 'the same figure',
  cases: [
    { id: 'below 1000 ppm', published: 12.1, computed: () => chemistry.solidsConstant(0.9) },
    { id: 'above 1000 ppm', published: 12.2, computed: () => chemistry.solidsConstant(1.1) },
  ],
};

const RULE: Sample = { ph: 7.8, fahrenheit: 68, calcium: 140, alkalinity: 20 };
const FIRST: Sample = { ph: 7.0, fahrenheit: 76, calcium: 200, alkalinity: 50 };
const SECOND: Sample = { ph: 7.6, fahrenheit: 84, calcium: 300, alkalinity: 75 };

const examples: Suite = {
  id: 'chemistry/worked-examples',
  area: 'chemistry',
  kind: 'published',
  document: 'Worked examples of the saturation index',
  at: '10 NYCRR 6-1.30; pool operator course, two sample problems',
  quantity: 'saturation index, table variant',
  band: { absolute: 0.0101 },
  bandBecause: 'the rule rounds each of its factors to 0.01; the course works in whole tenths',
  cases: [
    { id: 'the rule’s example', published: -0.8, computed: () => index('table', RULE) },
    { id: 'course, first problem', published: -0.9, computed: () => index('table', FIRST) },
    { id: 'course, second problem', published: 0.2, computed: () => index('table', SECOND) },
  ],
};

const variants: Suite = {
  id: 'chemistry/variants',
  area: 'chemistry',
  kind: 'practice',
  document: 'Standard Methods 2330 B and the simplified form (from memory)',
  at: 'the same worked examples, 1000 mg/L of dissolved solids',
  quantity: 'saturation index, against that of the table',
  band: { absolute: 0.165 },
  bandBecause: 'the variants are known to differ by about 0.15 on these waters',
  cases: (['standard-methods', 'carrier'] as const).flatMap((variant): Case[] => [
    { id: `${variant}, the rule’s example`, published: -0.8, computed: () => index(variant, RULE) },
    { id: `${variant}, first problem`, published: -0.9, computed: () => index(variant, FIRST) },
    { id: `${variant}, second problem`, published: 0.2, computed: () => index(variant, SECOND) },
  ]),
};

const constants: Suite = {
  id: 'chemistry/plummer-busenberg',
  area: 'chemistry',
  kind: 'practice',
  document: 'Plummer and Busenberg (1982), as Standard Methods 2330 B has it (from memory)',
  at: 'constants at 25 °C',
  quantity: '−log10 of the constant',
  band: { absolute: 0.0005 },
  bandBecause: 'printed to 0.001',
  cases: [
    { id: 'pK2', published: 10.329, computed: () => chemistry.secondDissociation(298.15) },
    { id: 'pKs of calcite', published: 8.48, computed: () => chemistry.calciteSolubility(298.15) },
  ],
};

const CYANURATE: readonly (readonly [ph: number, factor: number])[] = [
  [7.0, 0.23],
  [7.2, 0.27],
  [7.4, 0.31],
  [7.6, 0.33],
  [7.8, 0.35],
  [8.0, 0.36],
];

const cyanurate: Suite = {
  id: 'chemistry/cyanurate-share',
  area: 'chemistry',
  kind: 'practice',
  document: 'Wojtowicz, Journal of the Swimming Pool and Spa Industry (from memory)',
  at: 'table of the cyanurate share of the alkalinity',
  quantity: 'alkalinity as calcium carbonate counted for a part of cyanuric acid',
  band: { absolute: 0.006 },
  bandBecause: 'printed to 0.01',
  cases: CYANURATE.map(([ph, factor]) => ({
    id: `pH ${ph.toFixed(1)}`,
    published: factor,
    computed: () => {
      const taken = evaluate(chemistry.carbonateAlkalinity, { ph, totalAlkalinity: 0.1, cyanuricAcid: 0.1 });
      return taken.ok ? 1 - taken.value / 0.1 : taken;
    },
  })),
};

const third: Suite = {
  id: 'chemistry/cyanurate-third',
  area: 'chemistry',
  kind: 'published',
  document: 'Service Industry News, 14 September 2021',
  at: '100 − 0.33 × 90, near pH 7.5 to 7.6',
  quantity: 'carbonate alkalinity, mg/L',
  band: { absolute: 1 },
  bandBecause: 'a third, said to depend on pH',
  cases: [
    {
      id: '100 mg/L with 90 mg/L of cyanuric acid at pH 7.55',
      published: 100 - 0.33 * 90,
      computed: () => {
        const x = { ph: 7.55, totalAlkalinity: 0.1, cyanuricAcid: 0.09 };
        const left = evaluate(chemistry.carbonateAlkalinity, x);
        return left.ok ? left.value * 1000 : left;
      },
    },
  ],
};

export const CHEMISTRY_SUITES: readonly Suite[] = [
  card,
  logarithms,
  solids,
  examples,
  third,
  variants,
  constants,
  cyanurate,
];
