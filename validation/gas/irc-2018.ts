/** International Residential Code 2018: equivalent lengths of fittings, and when to purge outdoors. */
import { gas, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';
import { EQUIVALENT_LENGTHS, FITTING_COLUMNS } from './data/irc-2018-a22.ts';

const { FOOT, INCH, INCH_OF_WATER } = quantity;
const DOCUMENT = 'International Residential Code 2018';

const fittingCases: Case[] = Object.entries(EQUIVALENT_LENGTHS).flatMap(([nominal, { inside, feet }]) =>
  FITTING_COLUMNS.map((id, column) => ({
    id: `${nominal} ${id}`,
    published: feet[column] ?? Number.NaN,
    computed: () => {
      const { lengthOverDiameter } = catalog.gas.fitting(id);
      return gas.equivalentLength.kernel({ lengthOverDiameter, insideDiameter: inside * INCH }) / FOOT;
    },
  })),
);

const EQUIVALENT_SUITE: Suite = {
  id: 'gas/irc-2018-a22',
  area: 'gas',
  kind: 'published',
  document: DOCUMENT,
  at: 'Appendix A, Table A.2.2 (IFGC 2018 Table A.2.2), screwed fittings and welding elbows',
  quantity: 'equivalent length, ft',
  band: { relative: 0.0075, absolute: 0.0051 },
  bandBecause:
    'The printed ratios are rounded to whole diameters (67 for 66.6, which is 0.6 %); lengths are rounded to three digits.',
  cases: fittingCases,
};

/** Printed: nominal size (in) and the length (ft) over which the purge goes outdoors. */
const PURGE_ROWS: readonly (readonly [number, number])[] = [
  [2.5, 50],
  [3, 30],
  [4, 15],
  [5, 15],
  [6, 10],
];

/** Greatest length of a size that may still be purged indoors, ft, found by trying. */
function longestIndoors(nominal: number): number {
  const outdoors = (feet: number): boolean =>
    gas.outdoorPurge(catalog.gas.OUTDOOR_PURGE, {
      workingPressure: 7 * INCH_OF_WATER,
      pipes: [{ nominal: nominal * INCH, length: feet * FOOT }],
    }).outdoors;
  let feet = 0;
  while (feet < 1000 && !outdoors(feet + 1)) feet += 1;
  return feet;
}

const PURGE_SUITE: Suite = {
  id: 'gas/irc-2018-purge',
  carried: true,
  area: 'gas',
  kind: 'published',
  document: DOCUMENT,
  at: 'Table G2417.7.1.1 (IFGC 406.7.1.1)',
  quantity: 'longest piping purged indoors, ft',
  band: { absolute: 1e-6 },
  bandBecause: 'A limit is a limit.',
  cases: PURGE_ROWS.map(([nominal, feet]) => ({
    id: `${nominal} in`,
    published: feet,
    computed: () => longestIndoors(nominal),
  })),
};

export const IRC_SUITES: readonly Suite[] = [EQUIVALENT_SUITE, PURGE_SUITE];
