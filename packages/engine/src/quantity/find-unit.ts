/**
 * Finds the unit a text means, for a kind: the same text can serve two kinds (`10 °F`, `14 oz`, `100 ft3/h`).
 *
 * The table is searched first, exactly and then without regard to capitals (except where they carry meaning, as in
 * mW and MW); then the text is read as a compound of other units.
 */
import { compoundUnit } from './compound.ts';
import { GAS_BASES, type GasBase } from './gas-base.ts';
import { KINDS, type Kind } from './kinds.ts';
import { readBase } from './read-base.ts';
import type { Unit } from './unit.ts';
import { type Found, INDEXES, UNITS_OF } from './unit-index.ts';
import { unitKey } from './unit-text.ts';
import { atBase, isStandardKind, type StandardKind, usualBase } from './units/index.ts';

/**
 * The unit that `text` means for `kind`, undefined where it means none; `base` is the gas base taken where the text
 * of a standard volume names none.
 *
 * Worked example: findUnit('MBtu/h', 'heat-rate') → unit `kBtu/h`, note `m-is-thousand`.
 */
export function findUnit(text: string, kind: Kind, base?: GasBase): Found | undefined {
  const index = INDEXES.get(kind);
  const key = unitKey(text);
  const found = index?.exact.get(key) ?? index?.folded.get(key.toLowerCase());
  if (!isStandardKind(kind)) return found ?? composed(text, kind);
  if (found === undefined) return withWrittenBase(text, kind);
  if (base === undefined || found.note !== 'base-understood' || found.geometric === undefined) return found;
  return { unit: atBase(found.geometric, kind, base) };
}

/** The named units of a kind; of a standard volume, each at every known base. */
export function unitsOf(kind: Kind): readonly Unit[] {
  return UNITS_OF.get(kind) ?? [];
}

/** The ids to offer where a unit of the kind is wanted; of a standard volume, each at its usual base. */
export function unitNames(kind: Kind): readonly string[] {
  const usual = unitsOf(kind).filter((unit) => unit.base === undefined || unit.base === usualBase(unit));
  return usual.map((unit) => unit.id);
}

/** Ids of units that differ from `text` only in capitals, where capitals carry meaning. */
export function unitsInOtherLetters(text: string, kind: Kind): readonly string[] {
  return INDEXES.get(kind)?.cased.get(unitKey(text).toLowerCase()) ?? [];
}

/** Kinds, other than `kind`, for which the text is a unit. */
export function otherKinds(text: string, kind: Kind): readonly Kind[] {
  return (Object.keys(KINDS) as Kind[]).filter(
    (other) => other !== kind && findUnit(text, other) !== undefined,
  );
}

/** Whether the text is a unit of a standard volume followed by a base that is not understood. */
export function hasUnknownBase(text: string, kind: Kind): boolean {
  const [, before] = /^([^(@]+)[(@]/.exec(text) ?? [];
  return before !== undefined && isStandardKind(kind) && findUnit(before, kind) !== undefined;
}

/** The bases to offer where one was not understood. */
export function baseNames(): readonly string[] {
  return Object.values(GAS_BASES).map((base) => base.id);
}

function composed(text: string, kind: Kind): Found | undefined {
  const unit = compoundUnit(text, kind);
  if (unit === undefined) return undefined;
  const named = unitsOf(kind).find((one) => !one.gauge && Math.abs(one.factor / unit.factor - 1) < 1e-12);
  return { unit: named ?? unit };
}

function withWrittenBase(text: string, kind: StandardKind): Found | undefined {
  const written = readBase(text);
  if (written === undefined) return undefined;
  const geometric = INDEXES.get(kind)?.exact.get(unitKey(written.before))?.geometric;
  return geometric && { unit: atBase(geometric, kind, written.base), geometric };
}
