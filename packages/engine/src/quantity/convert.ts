/** Conversion by unit name, for code and tests. What a person types goes through `parseQuantity`. */
import { gaugeArea, gaugeOf } from './awg.ts';
import { findUnit } from './find-unit.ts';
import { KINDS, type Kind } from './kinds.ts';
import type { Unit } from './unit.ts';
import { UNITS } from './units/index.ts';

/** SI value of a value in `unit`. */
export function toSi(value: number, unit: Unit): number {
  return unit.gauge ? gaugeArea(value) : (value + unit.offset) * unit.factor;
}

/** Value in `unit` of an SI value. */
export function inUnit(siValue: number, unit: Unit): number {
  return unit.gauge ? gaugeOf(siValue) : siValue / unit.factor - unit.offset;
}

/**
 * SI value of `value` in the unit called `unit`.
 *
 * With a kind, the name is whatever that kind understands (`ft3/h` of a standard-gas-flow is at 60 °F and 14.73 psia).
 * Without a kind it must be a unit id (`degF` is then a temperature, `delta degF` a difference, `oz` a mass) or mean
 * the same for every kind that knows it; a flow in cubic feet needs its kind, for its foot may be standard or metered.
 *
 * Errors: throws on an unknown or ambiguous unit, which is a bug of the caller.
 * Source: NIST SP 811 (2008), Appendix B. Worked example: si(1, 'ft') = 0.3048; si(32, 'degF') = 273.15; si(18, 'delta degF') = 10.
 */
export function si(value: number, unit: string, kind?: Kind): number {
  return toSi(value, unitCalled(unit, kind));
}

/** The value in `unit` of an SI value: the inverse of `si`, with the same errors. */
export function fromSi(siValue: number, unit: string, kind?: Kind): number {
  return inUnit(siValue, unitCalled(unit, kind));
}

/** The unit of that name; throws where there is none, or more than one. */
export function unitCalled(name: string, kind?: Kind): Unit {
  if (kind !== undefined) {
    const found = findUnit(name, kind)?.unit;
    if (found === undefined) throw new Error(`no unit of ${kind} is called ${name}`);
    return found;
  }
  const unit = UNITS.get(name) ?? unitOfAnyKind(name);
  if (mayBeStandard(unit))
    throw new Error(`${name} may be of standard or of metered gas, or of air; name the kind`);
  return unit;
}

function mayBeStandard(unit: Unit): boolean {
  if (!unit.kinds.includes('metered-gas-flow')) return false;
  return findUnit(unit.id, 'standard-gas-flow')?.unit.factor !== unit.factor;
}

function unitOfAnyKind(name: string): Unit {
  const found = new Set<Unit>();
  for (const kind of Object.keys(KINDS) as Kind[]) {
    const unit = findUnit(name, kind)?.unit;
    if (unit !== undefined) found.add(unit);
  }
  const [first, ...more] = found;
  if (first === undefined) throw new Error(`no unit is called ${name}`);
  if (more.some((other) => other.factor !== first.factor || other.offset !== first.offset))
    throw new Error(`the unit ${name} means different things for different kinds; name the kind`);
  return first;
}
