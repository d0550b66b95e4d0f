/**
 * Words in the labels of units, each under itself: what another language must have. A label that stands here whole
 * (`in w.c.`) is taken whole; of any other each word is looked up (`ft` in `ft³/h`). Symbols of the SI are no words.
 */
const WHOLE = [
  'in w.c.',
  'mm w.c.',
  'ft w.c.',
  'm w.c.',
  'ft of head',
  'm of head',
  'boiler hp',
  'imp gal',
  'imp gpm',
  'imp gph',
];

const WORDS = [
  'a',
  'd',
  'deg',
  'ft',
  'gal',
  'gpd',
  'gph',
  'gpm',
  'in',
  'lb',
  'lbf',
  'mi',
  'mph',
  'oz',
  'per',
  'std',
];

const MORE = [
  'electric',
  'hp',
  'imp',
  'metric',
  'ohm',
  'permille',
  'qt',
  'short',
  'therm',
  'ton',
  'wk',
  'yd',
];

export const UNITS = Object.fromEntries([...WHOLE, ...WORDS, ...MORE].map((text) => [text, text]));
