/** Examples of the Canadian code's air supply, as a training text works them. */
import { air, evaluate, expectOk, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';
import { btu } from './units.ts';

const { INCH } = quantity;

type Rate = keyof typeof air.CANADIAN_RATES;

function opening(input: number, rate: Rate): number {
  const need = { heatInput: btu(input), rate: air.CANADIAN_RATES[rate] };
  return expectOk(evaluate(air.canadianOpening, need)) / INCH ** 2;
}

const SOURCE = {
  area: 'air',
  kind: 'published',
  document: 'Gas technician training text restating CSA B149.1',
} as const;

/** Input, burner, printed opening (in2) and printed round duct (in). */
const EXAMPLES: readonly (readonly [id: string, input: number, rate: Rate, area: number, duct: number])[] = [
  ['125,000 with draught control', 125_000, 'draught-control', 18, 5],
  ['200,000 and 90,000 with draught control', 290_000, 'draught-control', 43, 7],
  ['100,000 and 36,000 without', 136_000, 'no-draught-control', 11, 4],
  ['150,000 and 60,000 with draught control', 210_000, 'draught-control', 32, 6],
  ['700,000 with draught control', 700_000, 'draught-control', 100, 12],
];

export const CANADIAN_OPENINGS: Suite = {
  ...SOURCE,
  id: 'air/b149-openings',
  at: 'Unit 22, examples of tables 8.1 to 8.3 and of clause 8.4',
  quantity: 'free area, in2',
  band: { absolute: 0.51 },
  bandBecause:
    'whole square inches; the step of 25,000 Btu/h, and 14,000 for a square inch, are read off these examples',
  cases: [
    ...EXAMPLES.map(([id, input, rate, area]) => ({
      id,
      published: area,
      computed: () => opening(input, rate),
    })),
    ...[
      [50_000, 7],
      [225_000, 32],
      [300_000, 43],
    ].map(([input = 0, area = 0]) => ({
      id: `table 8.1, ${input} Btu/h`,
      published: area,
      computed: () => opening(input, 'draught-control'),
    })),
    {
      id: '700,000, ventilation opening',
      published: 10,
      computed: () => {
        const area = opening(700_000, 'draught-control') * INCH ** 2;
        return expectOk(evaluate(air.canadianHighOpening, { area })) / INCH ** 2;
      },
    },
    {
      id: 'partition openings for 125,000, each',
      published: 125,
      computed: () =>
        expectOk(
          evaluate(air.openingArea, {
            heatInput: btu(125_000),
            rate: air.OPENING_RATES['two-indoor'],
            leastArea: 0,
          }),
        ) /
        INCH ** 2,
    },
  ],
};

/** The round duct whose bore has the area of the opening, to the next whole inch. */
export const CANADIAN_DUCTS: Suite = {
  ...SOURCE,
  id: 'air/b149-round-ducts',
  at: 'Unit 22, the same examples',
  quantity: 'round duct, in',
  band: { absolute: 0.01 },
  bandBecause: 'whole inches',
  cases: EXAMPLES.map(([id, input, rate, , duct]) => ({
    id,
    published: duct,
    computed: () => Math.ceil(Math.sqrt((4 / Math.PI) * opening(input, rate))),
  })),
  misfits: [
    {
      cases: ['200,000 and 90,000 with draught control', '150,000 and 60,000 with draught control'],
      because: 'the printed ducts of 7 and 6 in have 10 % less area than the openings printed beside them',
    },
  ],
};
