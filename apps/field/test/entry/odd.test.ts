/** Odd, not impossible: a slipped decimal and a wrong unit are found, a usual value is left alone. */
import { readFileSync } from 'node:fs';
import { quantity } from '@firstfire/engine';
import { fold, jobViewOf, RECORD_SPECS, readJobFile } from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { oddity } from '../../src/entry/odd.ts';
import { understand } from '../../src/entry/understood.ts';
import { USUAL_RANGES } from '../../src/entry/usual-ranges.ts';

function asked(path: string, typed: string, unit: string) {
  const [collection = '', field = ''] = path.split('.');
  const spec = RECORD_SPECS.find((one) => one.collection === collection)?.fields[field];
  if (spec?.type !== 'quantity') throw new Error(path);
  const read = understand(typed, { kind: spec.kind, unit });
  if (read.state !== 'read') throw new Error(typed);
  return oddity({ collection, id: '-', field }, spec.kind, read);
}

describe('an odd reading', () => {
  it('is told in another unit, with what may have been meant', () => {
    const odd = asked('gasSupply.setPressure', '70', 'in w.c.');
    expect(odd?.meant).toBe('7.0 in w.c.');
    // 70 in w.c. at 27.68 in w.c. to the psi is 2.5 psi.
    expect(odd?.also?.unit).toBe('psi');
    expect(quantity.fromSi(odd?.also?.si ?? 0, 'psi', 'pressure')).toBeCloseTo(70 / 27.68, 2);
  });

  it('may be a wrong unit key', () => {
    expect(asked('gasSupply.setPressure', '7', 'psi')?.meant).toBe('7 in w.c.');
    expect(asked('heaters.input', '333000', 'kBtu/h')?.meant).toBe('333000 Btu/h');
  });

  it('has no guess where none fits', () => {
    const odd = asked('circuits.voltsIdle', '48', 'V');
    expect(odd).toBeDefined();
    expect(odd?.meant).toBeUndefined();
  });

  it('is none where it usually lies, or where nobody knows', () => {
    expect(asked('gasSupply.setPressure', '7.2', 'in w.c.')).toBeUndefined();
    expect(asked('gasSupply.setPressure', '2', 'psi')).toBeUndefined();
    expect(asked('spots.planX', '900', 'ft')).toBeUndefined();
  });

  it('is of a field there is, in units of its kind, inside what is possible', () => {
    for (const [path, bands] of Object.entries(USUAL_RANGES)) {
      const [collection = '', field = ''] = path.split('.');
      const spec = RECORD_SPECS.find((one) => one.collection === collection)?.fields[field];
      expect([path, spec?.type]).toEqual([path, 'quantity']);
      if (spec?.type !== 'quantity') continue;
      for (const [low, high, unit] of bands) {
        const [from, to] = [quantity.si(low, unit, spec.kind), quantity.si(high, unit, spec.kind)];
        expect([path, from < to]).toEqual([path, true]);
        expect([path, to <= (spec.max ?? Infinity) && from >= (spec.min ?? -Infinity)]).toEqual([path, true]);
      }
    }
  });

  it.each(['house-pool', 'public-pool', 'swap', 'winter-propane'])('is none in the example %s', (name) => {
    const file = readJobFile(
      readFileSync(new URL(`../../../../examples/${name}.job.json`, import.meta.url), 'utf8'),
    );
    if (!file.ok) throw new Error(name);
    const view = jobViewOf(fold(file.value.operations, file.value.document.doc));
    const odd: string[] = [];
    for (const { collection, single, fields } of RECORD_SPECS) {
      for (const record of single ? [view.record(collection, '-')] : view.all(collection)) {
        for (const [field, spec] of Object.entries(fields)) {
          const reading = record.reading(field);
          if (spec.type !== 'quantity' || typeof reading?.value !== 'number') continue;
          const unit = reading.unit ?? '1';
          const read = understand(reading.typed ?? `${reading.value} ${unit === '1' ? '' : unit}`, {
            kind: spec.kind,
            unit,
          });
          if (read.state !== 'read') odd.push(`${collection}.${field} unread: ${reading.typed}`);
          else if (oddity({ collection, id: record.id, field }, spec.kind, read))
            odd.push(`${collection}.${field}: ${reading.value} ${unit}`);
        }
      }
    }
    expect(odd).toEqual([]);
  });
});
