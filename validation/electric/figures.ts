/** Figures of the pool articles of the codes, as the rules hold them. */
import { quantity } from '@firstfire/engine';
import { catalog, RULES } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { FOOT, gaugeOf, INCH } = quantity;

/** One figure of a rule in one edition, in SI. */
function figure(rule: string, edition: string, name: string): number {
  const entry = RULES.find((one) => one.id === rule)?.editions.find((one) => one.edition === edition);
  return (entry?.values as Readonly<Record<string, number>> | undefined)?.[name] ?? Number.NaN;
}

type Row = readonly [
  id: string,
  published: number,
  rule: string,
  name: string,
  toPrinted: (si: number) => number,
];

const inFeet = (si: number): number => si / FOOT;
const inInches = (si: number): number => si / INCH;
const inPercent = (share: number): number => share * 100;
const asIs = (si: number): number => si;

const casesOf = (edition: string, rows: readonly Row[]): readonly Case[] =>
  rows.map(([id, published, rule, name, toPrinted]) => ({
    id,
    published,
    computed: () => toPrinted(figure(`power.${rule}`, edition, name)),
  }));

const shared = {
  area: 'electric',
  kind: 'published',
  quantity: 'the figure of the rule, in the unit it is printed in, as each case says',
  band: { relative: 1e-9 },
  bandBecause: 'whole numbers of the unit they are printed in',
} as const;

const nec: Suite = {
  ...shared,
  id: 'electric/nec-680-figures',
  carried: true,
  document: 'National Electrical Code 2011, articles 210, 215, 680 and 725',
  at: '2013 California Electrical Code',
  cases: casesOf('NEC 2011', [
    ['680.26(B): bonding conductor, AWG', 8, 'bond-size', 'least', gaugeOf],
    ['680.26(B)(1)(b): grid, least pitch, in', 12 - 4, 'grid-pitch', 'low', inInches],
    ['680.26(B)(1)(b): grid, greatest pitch, in', 12 + 4, 'grid-pitch', 'high', inInches],
    ['680.26(B)(2): perimeter, ft', 3, 'perimeter-width', 'least', inFeet],
    ['680.26(B)(2): points', 4, 'perimeter-points', 'least', asIs],
    ['680.26(B)(2)(b): ring, nearest, in', 18, 'ring-distance', 'low', inInches],
    ['680.26(B)(2)(b): ring, farthest, in', 24, 'ring-distance', 'high', inInches],
    ['680.26(B)(2)(b): ring, shallowest, in', 4, 'ring-depth', 'low', inInches],
    ['680.26(B)(2)(b): ring, deepest, in', 6, 'ring-depth', 'high', inInches],
    ['680.26(C): water contact, in²', 9, 'water-bond', 'least', (si) => si / INCH ** 2],
    ['680.12: disconnect, ft', 5, 'disconnect-from-water', 'least', inFeet],
    ['680.22(D): other outlets, ft', 10, 'remote-from-water', 'least', inFeet],
    ['680.10: underground wiring, ft', 5, 'raceway-near-pool', 'reach', inFeet],
    ['725.136(I): class 2 spacing, in', 2, 'low-voltage-spacing', 'least', inInches],
    ['210.19(A): branch circuit, %', 3, 'voltage-drop', 'share', inPercent],
    ['215.2: feeder and branch, %', 5, 'supply-sag', 'share', inPercent],
  ]),
};

const canada: Suite = {
  ...shared,
  id: 'electric/c22-68-figures',
  carried: true,
  document: 'Canadian Electrical Code C22.1, section 68, as others quote it',
  at: 'poolspamarketing.com, rules 68-058(2) and (3); Quebec Safety Code B-1.1 r. 3 s. 22(3)',
  cases: casesOf('C22.1-21', [
    ['68-058(3): bonding conductor, AWG', 6, 'bond-size', 'least', gaugeOf],
    ['68-058(2): points', 4, 'perimeter-points', 'least', asIs],
    ['s. 22(3): ground-fault protection within, m', 3, 'ground-fault-near-water', 'reach', asIs],
  ]),
};

const { CONTACT_LIMIT, COPPER } = catalog.power;

const contact: Suite = {
  ...shared,
  id: 'electric/contact-limits',
  carried: true,
  document: 'National Electrical Code 2017, 680.2',
  at: 'low voltage contact limit; electricallicenserenewal.com',
  quantity: 'V',
  cases: [
    ['sine wave, effective', 15, CONTACT_LIMIT.sine],
    ['other alternating, peak', 21.2, CONTACT_LIMIT['other alternating']],
    ['direct', 30, CONTACT_LIMIT.direct],
    ['interrupted direct, peak', 12.4, CONTACT_LIMIT['direct, interrupted 10 to 200 times a second']],
  ].map(([id, published, held]) => ({
    id: String(id),
    published: Number(published),
    computed: () => Number(held),
  })),
};

const small: Suite = {
  ...shared,
  id: 'electric/small-conductors',
  carried: true,
  document: 'National Electrical Code 2023, Table 310.16 (2011: 310.15(B)(16))',
  at: 'overcurrent limits of small conductors, 240.4(D)',
  quantity: 'A',
  cases: (
    [
      ['14', 15],
      ['12', 20],
      ['10', 30],
    ] as const
  ).map(([awg, published]) => ({
    id: `${awg} AWG`,
    published,
    computed: () => COPPER.find((one) => one.gauge === awg)?.breakerMost ?? Number.NaN,
  })),
};

export const FIGURE_SUITES: readonly Suite[] = [nec, canada, contact, small];
