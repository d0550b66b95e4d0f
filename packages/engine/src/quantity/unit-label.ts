/** The name of a unit as the trade prints it: `°F`, `W/(m²·K)`, `ft³/h (60 °F, 14.73 psia)`. */
import type { Unit } from './unit.ts';
import { usualBase } from './units/index.ts';

/**
 * Label of a unit; it reads back through `parseQuantity` with the kind of the unit.
 *
 * A standard volume names its base in full, or with `shortBase` as `std ft³/h` where the base is the usual one.
 */
export function unitLabel(unit: Unit, shortBase = false): string {
  if (unit.label !== undefined) return unit.label;
  if (unit.base === undefined) return pretty(unit.id);
  const name = unit.id.slice(0, -unit.base.id.length - 2);
  const short = shortBase && usualBase(unit).id === unit.base.id && /[fm]t?3/.test(name);
  if (short) return pretty(name.replace(/ft3|m3/, 'std $&'));
  return `${pretty(name)} (${prettyBase(unit.base.id)})`;
}

function pretty(name: string): string {
  return name
    .replace(/deg([CFR])/g, '°$1')
    .replace(/\bu(m|A|g|Pa)\b/g, 'µ$1')
    .replace(/([a-zA-Z])2\b/g, '$1²')
    .replace(/([a-zA-Z])3\b/g, '$1³')
    .replace(/^(\S*Pa|Btu) (s$|in\/)/, '$1·$2')
    .replace(/\/\(([^()]*)\)/g, (_, inside: string) => `/(${inside.replaceAll(' ', '·')})`);
}

function prettyBase(id: string): string {
  const [degrees = '', pressure = ''] = id.split(',');
  return `${degrees.replace(/[CF]$/, ' °$&').replace(/K$/, ' K')}, ${pressure.replace(/[a-zA-Z]+$/, ' $&')}`;
}

/** Words of labels in another language, by a whole label (`in w.c.`) or by a word of one (`ft`). */
export type LabelWords = Readonly<Record<string, string>>;

/**
 * A label in another language: taken whole where it is known whole, else word by word.
 *
 * Worked example: with { ft: 'pi' } the label `ft³/h (60 °F, 14.73 psia)` is `pi³/h (60 °F, 14.73 psia)`.
 */
export function labelInWords(label: string, words: LabelWords): string {
  return words[label] ?? label.replace(/(?<!°)[a-z]+/gi, (word) => words[word] ?? word);
}
