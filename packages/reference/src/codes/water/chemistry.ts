/** The water itself: whether it scales or eats the exchanger, and what it holds. */
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';

/** kg/m3 of a mg/L. */
const MILLIGRAM = 0.001;

function anywhere<V>(
  source: { readonly document: string; readonly at: string },
  values: V,
): readonly Edition<V>[] {
  return [
    { edition: 'any', from: '1900-01-01', source: { ...source, known: 'read in a public copy' }, values },
  ];
}

/** Where the trade’s sources disagree (−0.5 to 0.5, −0.3 to 0.3) the one that tells scale from corrosion is followed. */
const BALANCED = anywhere(
  {
    document: 'Service Industry News, 14 March 2021',
    at: 'saturation index of pools and spas, factor table',
  },
  { low: -0.3, high: 0.5 },
);

/** A band, by half its width. As the water is now. */
export const saturationIndex = defineRule({
  id: 'water.saturation-index',
  line: 'water',
  scope: 'basin',
  numbers: { found: 'basin.saturation-index' },
  words: {},
  editions: BALANCED,
  check: (n, _w, { low, high }) => ({ sense: 'within', low, high, found: n.found, kind: 'ph' }),
});

/** The same sample at the set temperature: warm water holds less lime, and the exchanger is the first to feel it. */
export const saturationIndexHeated = defineRule({
  id: 'water.saturation-index-heated',
  line: 'water',
  scope: 'basin',
  numbers: { found: 'basin.saturation-index-heated' },
  words: {},
  editions: BALANCED,
  check: (n, _w, { low, high }) => ({ sense: 'within', low, high, found: n.found, kind: 'ph' }),
});

interface Band {
  readonly low: number;
  readonly high: number;
}

interface ByVessel {
  readonly pool: Band;
  readonly spa: Band;
}

function vessel(values: ByVessel, use: string | undefined): Band {
  return use === 'spa' ? values.spa : values.pool;
}

const APSP = 'ANSI/APSP/ICC-11 2019';
const PH: Band = { low: 7.2, high: 7.8 };
const ALKALINITY: Band = { low: 60 * MILLIGRAM, high: 180 * MILLIGRAM };

/** By half the width. */
export const ph = defineRule({
  id: 'water.ph',
  line: 'water',
  scope: 'basin',
  numbers: { found: 'basin.ph' },
  words: {},
  editions: anywhere({ document: APSP, at: 'appendix A' }, PH),
  check: (n, _w, { low, high }) => ({ sense: 'within', low, high, found: n.found, kind: 'ph' }),
});

/** By half the width. */
export const calciumHardness = defineRule({
  id: 'water.calcium-hardness',
  line: 'water',
  scope: 'basin',
  numbers: { found: 'basin.calcium' },
  words: { use: 'basin.use' },
  editions: anywhere<ByVessel>(
    { document: APSP, at: 'appendix A7' },
    {
      pool: { low: 150 * MILLIGRAM, high: 1000 * MILLIGRAM },
      spa: { low: 100 * MILLIGRAM, high: 800 * MILLIGRAM },
    },
  ),
  check: (n, w, values) => ({
    sense: 'within',
    ...vessel(values, w.use),
    found: n.found,
    kind: 'mass-concentration',
  }),
});

/** By half the width. */
export const totalAlkalinity = defineRule({
  id: 'water.total-alkalinity',
  line: 'water',
  scope: 'basin',
  numbers: { found: 'basin.alkalinity' },
  words: {},
  editions: anywhere({ document: APSP, at: 'appendix A' }, ALKALINITY),
  check: (n, _w, { low, high }) => ({
    sense: 'within',
    low,
    high,
    found: n.found,
    kind: 'mass-concentration',
  }),
});

/** Divided by the limit. */
export const cyanuricAcid = defineRule({
  id: 'water.cyanuric-acid',
  line: 'water',
  scope: 'basin',
  numbers: { found: 'basin.cyanuric-acid' },
  words: {},
  editions: anywhere({ document: APSP, at: 'appendix A, outdoor pools' }, { most: 100 * MILLIGRAM }),
  check: (n, _w, { most }) => ({
    sense: 'at-most',
    required: most,
    found: n.found,
    kind: 'mass-concentration',
    yardstick: most,
  }),
});

/** By half the width. Chlorine beyond it eats copper; below it nobody should bathe. */
export const freeChlorine = defineRule({
  id: 'water.free-chlorine',
  line: 'water',
  scope: 'basin',
  numbers: { found: 'basin.free-chlorine' },
  words: { use: 'basin.use' },
  editions: byPractice<ByVessel>({
    pool: { low: 1 * MILLIGRAM, high: 4 * MILLIGRAM },
    spa: { low: 2 * MILLIGRAM, high: 5 * MILLIGRAM },
  }),
  check: (n, w, values) => ({
    sense: 'within',
    ...vessel(values, w.use),
    found: n.found,
    kind: 'mass-concentration',
  }),
});
