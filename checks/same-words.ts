/** Texts that are the same in English and in another language: names, symbols, and words that both share. */
const SYMBOLS = ['hp', 'imp', 'lb', 'lbf', 'mi', 'oz', 'ohm', 'std', 'therm', 'pH'];
const SHARED = ['Nevada', 'spa'];

const SPANISH = ['Gas', 'gas', 'laminar', 'manual', 'metal', 'natural', 'no'];

const FRENCH_NOUNS = [
  ...['Air', 'air', 'altitude', 'aluminium', 'circuit', 'coefficients', 'Convection, McAdams'],
  ...['Convection, Watmuff', 'dimensions', 'direct', 'garage', 'latitude', 'longitude', 'note', 'propane'],
  ...['rectangle', 'type B', 'volume'],
];

const FRENCH_CITATIONS = ['Figure', 'pages', 'Section', 'section', 'sections'];

/** On the screens of the field app. */
const FRENCH_SCREEN = ['photo', 'Canada', 'code', '{count} points', 'Service', 'SI'];

export const SAME_WORDS: Readonly<Record<string, readonly string[]>> = {
  es: [
    ...SYMBOLS,
    ...SHARED,
    ...SPANISH,
    '160 psi',
    'gal',
    '{count} rpm',
    'SI',
    'Canadian Electrical Code',
    'gpm',
    'qt',
    'ton',
    'yd',
  ],
  fr: [...SYMBOLS, ...SHARED, ...FRENCH_NOUNS, ...FRENCH_CITATIONS, ...FRENCH_SCREEN],
};
