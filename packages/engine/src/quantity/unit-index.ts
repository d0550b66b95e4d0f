/** The unit table turned about: for each kind, from the ways to write a unit to the unit. Built once. */
import { GAS_BASES } from './gas-base.ts';
import { KINDS, type Kind } from './kinds.ts';
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

export interface UnitIndex {
  readonly exact: Map<string, Found>;
  /** In small letters; undefined where two units would share a key. */
  readonly folded: Map<string, Found | undefined>;
  /** Ids of the units, by key in small letters, that are never read with other letters. */
  readonly cased: Map<string, string[]>;
}

const KIND_LIST = Object.keys(KINDS) as Kind[];

export const INDEXES: ReadonlyMap<Kind, UnitIndex> = new Map(KIND_LIST.map((kind) => [kind, indexOf(kind)]));

export const UNITS_OF: ReadonlyMap<Kind, readonly Unit[]> = new Map(
  KIND_LIST.map((kind) => [kind, [...UNITS.values()].filter((unit) => unit.kinds.includes(kind))]),
);

function indexOf(kind: Kind): UnitIndex {
  const index: UnitIndex = { exact: new Map(), folded: new Map(), cased: new Map() };
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

function addGeometric(index: UnitIndex, geometric: Unit, kind: StandardKind): void {
  const usual: Found = {
    unit: atBase(geometric, kind, usualBase(geometric)),
    note: 'base-understood',
    geometric,
  };
  const normal: Found = { unit: atBase(geometric, kind, GAS_BASES.normal), geometric };
  for (const name of [geometric.id, ...geometric.aliases]) {
    if (isActual(name)) continue;
    add(index, name, usual);
    for (const written of standardNames(name)) add(index, written, usual);
    for (const written of normalNames(name)) add(index, written, normal);
  }
}

/** `acfh` says that the volume is the one in the meter: never a standard one. */
function isActual(name: string): boolean {
  return /^(ac|actual)/i.test(name);
}

function add(index: UnitIndex, name: string, found: Found): void {
  const key = unitKey(name);
  if (!index.exact.has(key)) index.exact.set(key, found);
  const small = key.toLowerCase();
  if (found.unit.cased) {
    const ids = index.cased.get(small) ?? [];
    if (!ids.includes(found.unit.id)) index.cased.set(small, [...ids, found.unit.id]);
    return;
  }
  const other = index.folded.get(small);
  if (!index.folded.has(small)) index.folded.set(small, found);
  else if (other?.unit.id !== found.unit.id) index.folded.set(small, undefined);
}
