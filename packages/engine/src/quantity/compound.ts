/**
 * Reads a unit made of other units: `Btu/hr-ft²-°F`, `W/m2K`, `kg m-2 s-1`, `lb/(ft2 h)`, `kcal/h`.
 *
 * A slash holds for all that follows it, up to the next slash or out of its bracket (`W/m2 K` is W/(m2 K)): the other
 * reading is never meant by the trade. A degree inside a compound is a difference. The parts are the single-word units
 * of the table; the dimension of the whole tells whether it can serve a kind.
 */
import { KINDS, type Kind } from './kinds.ts';
import type { Unit } from './unit.ts';
import { asciiUnit } from './unit-text.ts';
import { HEAT_UNITS } from './units/heat.ts';
import { MATTER_UNITS } from './units/matter.ts';
import { OTHER_UNITS } from './units/other.ts';
import { SPACE_UNITS } from './units/space.ts';

/** Exponents of m, kg, s, K, A. */
type Dimension = readonly [number, number, number, number, number];

export interface Compound {
  readonly factor: number;
  readonly dimension: Dimension;
}

const NONE: Dimension = [0, 0, 0, 0, 0];
const LONGEST = 40;
const TOKEN = /[a-zA-Z]+(?:-?\d+(?:\.\d+)?)?|1(?=\s*\/)|[\s*.\-/()]/g;

/** Dimensions of the kinds whose single-word units may be parts, in the order in which they win a shared name. */
const PARTS: readonly (readonly [Kind, Dimension])[] = [
  ['length', [1, 0, 0, 0, 0]],
  ['area', [2, 0, 0, 0, 0]],
  ['volume', [3, 0, 0, 0, 0]],
  ['mass', [0, 1, 0, 0, 0]],
  ['time', [0, 0, 1, 0, 0]],
  ['temperature-difference', [0, 0, 0, 1, 0]],
  ['energy', [2, 1, -2, 0, 0]],
  ['power', [2, 1, -3, 0, 0]],
  ['heat-rate', [2, 1, -3, 0, 0]],
  ['force', [1, 1, -2, 0, 0]],
  ['pressure', [-1, 1, -2, 0, 0]],
  ['current', [0, 0, 0, 0, 1]],
  ['voltage', [2, 1, -3, 0, -1]],
  ['resistance', [2, 1, -3, 0, -2]],
];

/** Kinds whose units are more than a dimension, and are read from the table alone. */
const TABLE_ONLY: ReadonlySet<Kind> = new Set<Kind>([
  'length',
  'diameter',
  'head',
  'time',
  'angle',
  'temperature',
  'temperature-difference',
  'ratio',
  'ph',
  'volume-fraction',
  'wire-size',
  'sound-level',
  'standard-gas-volume',
  'standard-gas-flow',
  'heating-value',
]);

const SYMBOLS = new Map<string, Compound>();
const FOLDED = new Map<string, Compound | undefined>();
for (const unit of [...SPACE_UNITS, ...MATTER_UNITS, ...HEAT_UNITS, ...OTHER_UNITS]) addSymbols(unit);

const DIMENSIONS: ReadonlyMap<Kind, Dimension> = new Map(
  (Object.keys(KINDS) as Kind[]).flatMap((kind) => {
    if (TABLE_ONLY.has(kind)) return [];
    const part = PARTS.find(([name]) => name === kind)?.[1] ?? readCompound(KINDS[kind])?.dimension;
    return part === undefined ? [] : [[kind, part] as const];
  }),
);

/** The compound unit that `text` is, if it has the dimension of `kind`. */
export function compoundUnit(text: string, kind: Kind): Unit | undefined {
  const wanted = DIMENSIONS.get(kind);
  if (wanted === undefined) return undefined;
  const compound = readCompound(text);
  if (compound === undefined || !compound.dimension.every((power, i) => power === wanted[i]))
    return undefined;
  const id = asciiUnit(text).replace(/\s+/g, ' ');
  return { id, kinds: [kind], factor: compound.factor, offset: 0, aliases: [], noted: {} };
}

/** Factor and dimension of a text of units; undefined where it is none. */
export function readCompound(text: string): Compound | undefined {
  if (text.length > LONGEST) return undefined;
  const plain = asciiUnit(text).replace(/(^|\s)per\s+/gi, '/');
  const tokens = plain.match(TOKEN);
  if (tokens === null || tokens.join('') !== plain) return undefined;
  const words = tokens.filter((token) => !/^[\s*.-]$/.test(token));
  // A single word is the table's to know: psig is a pressure, yet no absolute one.
  return words.length > 1 || /\d/.test(plain) ? readGroup(words) : undefined;
}

/** Reads tokens with brackets, in one pass. */
function readGroup(tokens: readonly string[]): Compound | undefined {
  const open: { whole: Compound; sign: 1 | -1 }[] = [];
  let whole: Compound = { factor: 1, dimension: NONE };
  let sign: 1 | -1 = 1;
  let parts = 0;
  for (const token of tokens) {
    if (token === '/') sign = -1;
    else if (token === '(') {
      open.push({ whole, sign });
      whole = { factor: 1, dimension: NONE };
      sign = 1;
    } else if (token === ')') {
      const outer = open.pop();
      if (outer === undefined) return undefined;
      whole = times(outer.whole, whole, outer.sign);
      sign = outer.sign;
    } else if (token !== '1') {
      const part = readPart(token);
      if (part === undefined) return undefined;
      whole = times(whole, part, sign);
      parts += 1;
    }
  }
  return open.length === 0 && parts > 0 ? whole : undefined;
}

function readPart(token: string): Compound | undefined {
  const [, name = '', written = ''] = /^([a-zA-Z]+)(.*)$/.exec(token) ?? [];
  const symbol = SYMBOLS.get(name) ?? FOLDED.get(name.toLowerCase());
  const power = written === '' ? 1 : Number(written);
  if (symbol === undefined || !(Math.abs(power) <= 4) || power === 0) return undefined;
  return times({ factor: 1, dimension: NONE }, symbol, power);
}

function times(a: Compound, b: Compound, power: number): Compound {
  const [m, kg, s, k, amp] = b.dimension;
  const [m0, kg0, s0, k0, amp0] = a.dimension;
  return {
    factor: a.factor * b.factor ** power,
    dimension: [m0 + m * power, kg0 + kg * power, s0 + s * power, k0 + k * power, amp0 + amp * power],
  };
}

function addSymbols(unit: Unit): void {
  const part = PARTS.find(([kind]) => unit.kinds.includes(kind));
  if (part === undefined) return;
  const compound = { factor: unit.factor, dimension: part[1] };
  for (const name of [unit.id, ...unit.aliases].map(asciiUnit)) {
    if (!/^[a-zA-Z]+$/.test(name) || SYMBOLS.has(name)) continue;
    SYMBOLS.set(name, compound);
    const folded = name.toLowerCase();
    const clash = unit.cased || (FOLDED.has(folded) && FOLDED.get(folded)?.factor !== unit.factor);
    FOLDED.set(folded, clash ? undefined : compound);
  }
}
