import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inUnit, toSi } from './convert.ts';
import { unitsOf } from './find-unit.ts';
import { formatQuantity } from './format.ts';
import { GAS_BASES } from './gas-base.ts';
import { KINDS, type Kind } from './kinds.ts';
import { parseQuantity } from './parse-quantity.ts';
import { preferredUnit } from './preferred.ts';
import type { Unit } from './unit.ts';
import { unitLabel } from './unit-label.ts';

const PAIRS = (Object.keys(KINDS) as Kind[]).flatMap((kind) => unitsOf(kind).map((unit) => ({ kind, unit })));

/** Values that a unit can have: no gauge or absolute scale below its end. */
function possible(kind: Kind, unit: Unit, size: number): number {
  if (unit.gauge) return Math.round(Math.abs(size) % 40);
  const positive = kind === 'temperature' || kind === 'absolute-pressure';
  return positive ? Math.abs(size) : size;
}

const size = fc.oneof(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: -1000, max: 1000 }));

describe('there and back', () => {
  it('from a unit to SI and back, for every unit of every kind', () => {
    fc.assert(
      fc.property(fc.constantFrom(...PAIRS), size, ({ kind, unit }, x) => {
        const value = possible(kind, unit, x);
        const back = inUnit(toSi(value, unit), unit);
        // The zero point of a temperature costs digits near 0 of its own scale.
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * (Math.abs(value) + unit.offset) + 1e-300);
      }),
      { numRuns: 5000, seed: 1 },
    );
  });

  it('from SI to text and back, for every unit of every kind, with point and comma, plain and trade', () => {
    const decimal = fc.constantFrom('point' as const, 'comma' as const);
    const style = fc.constantFrom('plain' as const, 'trade' as const);
    fc.assert(
      fc.property(fc.constantFrom(...PAIRS), size, decimal, style, ({ kind, unit }, x, sign, how) => {
        const si = toSi(possible(kind, unit, x), unit);
        const text = formatQuantity(si, unit.id, { kind, digits: 16, decimal: sign, style: how });
        const parsed = parseQuantity(text, kind, { decimal: sign });
        if (!parsed.ok) throw new Error(`${text} (${kind}): ${JSON.stringify(parsed.issues)}`);
        expect(parsed.value.notes.filter((note) => note !== 'base-understood')).toEqual([]);
        const scale = Math.abs(si) + unit.factor * unit.offset;
        expect(Math.abs(parsed.value.si - si)).toBeLessThanOrEqual(1e-14 * scale);
      }),
      { numRuns: 8000, seed: 2 },
    );
  });

  it('writes every finite value in every unit, as far as a machine counts', () => {
    const any = fc.double({ min: -1e280, max: 1e280, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...PAIRS), any, ({ kind, unit }, si) => {
        for (const inchParts of [undefined, 32]) {
          const options = {
            kind,
            style: 'trade',
            ...(inchParts === undefined ? {} : { inchParts }),
          } as const;
          expect(formatQuantity(si, unit.id, options)).toMatch(/\d/);
        }
      }),
      { numRuns: 4000, seed: 24 },
    );
  });

  it('every id, alias and label is read as its unit', () => {
    for (const { kind, unit } of PAIRS) {
      if (unit.gauge) continue;
      const names = [unit.id, unitLabel(unit), unitLabel(unit, true)];
      for (const name of names) {
        const parsed = parseQuantity(`5 ${name}`, kind);
        expect(parsed.ok && parsed.value.si, `${name} of ${kind}`).toBe(toSi(5, unit));
      }
      if (unit.base !== undefined) continue;
      for (const name of [...unit.aliases, ...Object.keys(unit.noted)]) {
        const parsed = parseQuantity(`5 ${name}`, kind);
        expect(parsed.ok && parsed.value.si, `${name} of ${kind}`).toBeCloseTo(toSi(5, unit), 9);
      }
    }
  });

  it('the preferred unit of every kind and system is a unit of that kind', () => {
    for (const kind of Object.keys(KINDS) as Kind[])
      for (const system of ['us', 'si', 'mixed'] as const)
        for (const medium of [undefined, 'gas', 'water'] as const) {
          const unit = preferredUnit(kind, system, medium);
          const text = formatQuantity(toSi(8, unitsOf(kind)[0]!), unit, { kind, digits: 12 });
          expect(parseQuantity(text, kind), text).toMatchObject({ ok: true });
        }
  });

  it('every kind has units, and each standard volume stands at every known base', () => {
    for (const kind of Object.keys(KINDS) as Kind[]) expect(unitsOf(kind).length, kind).toBeGreaterThan(0);
    const flows = unitsOf('standard-gas-flow').map((unit) => unit.id);
    for (const base of Object.values(GAS_BASES)) expect(flows).toContain(`ft3/h(${base.id})`);
  });
});
