/**
 * Finds the unit a text means, for a kind: the same text can serve two kinds (`10 °F`, `14 oz`, `100 ft3/h`).
 */

import { GAS_BASES, type GasBase } from './gas-base.ts';
import { KINDS, type Kind } from './kinds.ts';
import { readBase } from './read-base.ts';
import type { ParseNote, Unit } from './unit.ts';
import { unitKey } from './unit-text.ts';
import {
  atBase,
  GEOMETRIC,
  isStandardKind,
  normalNames,
  STANDARD_UNITS,
  type StandardKind,
  standardNames,
  UNITS,
  usualBase,
} from './units/index.ts';

export interface Found {
  readonly unit: Unit;
  readonly note?: ParseNote;
  /** The geometric unit of a standard one. */
  readonly geometric?: Unit;
}

interface Index {
  readonly exact: Map<string, Found>;
  /** Without upper and lower case; undefined where two units would share a key. */
  readonly folded: Map<string, Found | undefined>;
}

const INDEXES: ReadonlyMap<Kind, Index> = new Map(
  (Object.keys(KINDS) as Kind[]).map((kind) => [kind, indexOf(kind)]),
);

/** The unit that `text` means for `kind`; `base` is the gas base taken where the text names none. */
export function findUnit(text: string, kind: Kind, base?: GasBase): Found | undefined {
  const index = INDEXES.get(kind);
  const key = unitKey(text);
  const found = index?.exact.get(key) ?? index?.folded.get(key.toLowerCase());
  if (!isStandardKind(kind)) return found;
  if (found === undefined) return withWrittenBase(text, kind);
  if (base === undefined || found.note !== 'base-understood' || found.geometric === undefined) return found;
  return { unit: atBase(found.geometric, kind, base) };
}

/** The units of a kind, the SI unit first. */
export function unitsOf(kind: Kind): readonly Unit[] {
  return UNITS_OF.get(kind) ?? [];
}

const UNITS_OF: ReadonlyMap<Kind, readonly Unit[]> = new Map(
  (Object.keys(KINDS) as Kind[]).map((kind) => [kind, listOf(kind)]),
);

function listOf(kind: Kind): readonly Unit[] {
  return [...UNITS.values()].filter((unit) => unit.kinds.includes(kind));
}

function withWrittenBase(text: string, kind: StandardKind): Found | undefined {
  const written = readBase(text);
  if (written === undefined) return undefined;
  const geometric = INDEXES.get(kind)?.exact.get(unitKey(written.before))?.geometric;
  return geometric && { unit: atBase(geometric, kind, written.base), geometric };
}

function indexOf(kind: Kind): Index {
  const index: Index = { exact: new Map(), folded: new Map() };
  if (isStandardKind(kind)) {
    for (const geometric of GEOMETRIC[kind]) addGeometric(index, geometric, kind);
    for (const unit of STANDARD_UNITS) if (unit.kinds.includes(kind)) add(index, unit.id, { unit });
    return index;
  }
  for (const unit of UNITS.values()) {
    if (!unit.kinds.includes(kind)) continue;
    for (const name of [unit.id, ...unit.aliases]) add(index, name, { unit });
    for (const [name, note] of Object.entries(unit.noted)) add(index, name, { unit, note });
  }
  return index;
}

function addGeometric(index: Index, geometric: Unit, kind: StandardKind): void {
  const usual: Found = {
    unit: atBase(geometric, kind, usualBase(geometric)),
    note: 'base-understood',
    geometric,
  };
  const normal: Found = { unit: atBase(geometric, kind, GAS_BASES.normal), geometric };
  for (const name of [geometric.id, ...geometric.aliases]) {
    add(index, name, usual);
    for (const written of standardNames(name)) add(index, written, usual);
    for (const written of normalNames(name)) add(index, written, normal);
  }
}

function add(index: Index, name: string, found: Found): void {
  const key = unitKey(name);
  if (!index.exact.has(key)) index.exact.set(key, found);
  if (found.unit.cased) return;
  const folded = key.toLowerCase();
  const other = index.folded.get(folded);
  if (!index.folded.has(folded)) index.folded.set(folded, found);
  else if (other?.unit.id !== found.unit.id) index.folded.set(folded, undefined);
}
