/** Texts that are the same in English and in another language: names, symbols, and words that both share. */
const SYMBOLS = ['gal', 'hp', 'imp', 'lb', 'lbf', 'mi', 'oz', 'ohm', 'std', 'therm', 'pH', '160 psi'];
const SHARED = ['Nevada', 'spa'];

const SPANISH = ['Gas', 'gas', 'laminar', 'manual', 'metal', 'natural', 'no'];

const FRENCH_NOUNS = [
  ...['Air', 'air', 'altitude', 'aluminium', 'circuit', 'coefficients', 'Convection, McAdams'],
  ...['Convection, Watmuff', 'dimensions', 'direct', 'garage', 'latitude', 'longitude', 'note', 'propane'],
  ...['rectangle', 'type B', 'volume'],
];

const FRENCH_CITATIONS = [
  ...['Figure', 'pages', 'Section', 'section', 'sections', 'Table', 'Tables', 'table', 'tables'],
  'transmittance 2 Btu/(h ft2 °F)',
  'Table G2417.7.1.1 (International Fuel Gas Code 406.7.1.1)',
];

export const SAME_WORDS: Readonly<Record<string, readonly string[]>> = {
  es: [...SYMBOLS, ...SHARED, ...SPANISH, 'Canadian Electrical Code', 'gpm', 'qt', 'ton', 'yd'],
  fr: [...SYMBOLS, ...SHARED, ...FRENCH_NOUNS, ...FRENCH_CITATIONS],
};
