/** Texts that are the same in English and in another language: names, symbols, and words that both share. */
const SYMBOLS = ['gal', 'hp', 'imp', 'lb', 'lbf', 'oz', 'ohm', 'qt', 'std', 'therm', 'pH', '160 psi'];

export const SAME_WORDS: Readonly<Record<string, readonly string[]>> = {
  es: [
    ...SYMBOLS,
    '{count} rpm',
    'Gas',
    'gas',
    'gpm',
    'laminar',
    'manual',
    'metal',
    'mi',
    'natural',
    'Nevada',
    'no',
    'spa',
    'ton',
    'yd',
  ],
  fr: [...SYMBOLS, 'photo'],
};
