/** The name of a unit as the trade prints it: `°F`, `ft³/h (60 °F, 14.73 psia)`, `W/(m²·K)`. */
import type { Unit } from './unit.ts';

/** Label of a unit; reads back through `parseQuantity`. */
export function unitLabel(unit: Unit): string {
  if (unit.label !== undefined) return unit.label;
  const [name = '', base] = splitBase(unit);
  const pretty = name
    .replace(/deg(?=[CFR]\b)/g, '°')
    .replace(/\bu(?=(m|A|g|Pa)\b)/g, 'µ')
    .replace(/(?<=[a-z])2(?!\w)/g, '²')
    .replace(/(?<=[a-z])3(?!\w)/g, '³')
    .replace(/\(([^()]*)\)/g, (_, inside: string) => `(${inside.replaceAll(' ', '·')})`)
    .replace(/(?<=Pa) s/, '·s');
  return base === undefined ? pretty : `${pretty} (${base})`;
}

function splitBase(unit: Unit): readonly [string, string?] {
  if (unit.base === undefined) return [unit.id];
  const base = unit.base.id.replace(/(?<=\d)([CFK]),/, ' °$1, ').replace(/(?<=\d)(?=[a-z])/, ' ');
  return [unit.id.slice(0, -unit.base.id.length - 2), base.replace('°K', 'K')];
}
