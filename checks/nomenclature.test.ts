/** The nomenclature page and the formulas say the same of every quantity. */
import * as engine from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { formulasIn } from './formulas.ts';
import { textOf } from './tree.ts';

/** Cells of the rows below a heading. */
function rowsUnder(heading: string): string[][] {
  const section = textOf('docs/nomenclature.md').split(`\n## ${heading}\n`)[1]?.split('\n## ')[0] ?? '';
  return section
    .split('\n')
    .filter((line) => line.startsWith('| '))
    .slice(2)
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
}

describe('the nomenclature', () => {
  it('has a row for each kind, with its unit', () => {
    const rows = rowsUnder('Kinds').map(([kind, unit]) => `${kind} ${unit}`);
    const kinds = Object.entries(engine.quantity.KINDS).map(([kind, unit]) => `${kind} ${unit}`);
    expect(rows).toEqual(kinds);
  });

  it('has a row for each input of a formula, with symbol, kind and unit, and none besides', () => {
    const used = new Map<string, Set<string>>();
    for (const { inputs } of formulasIn(engine)) {
      for (const [name, { symbol, kind }] of Object.entries(inputs)) {
        const key = `\`${name}\` ${kind} ${engine.quantity.siUnit(kind)}`;
        used.set(key, (used.get(key) ?? new Set()).add(symbol));
      }
    }
    const wanted = [...used].map(([key, symbols]) => `${key}: ${[...symbols].sort().join(', ')}`);
    const rows = rowsUnder('Quantities').map(
      ([name, symbols, kind, unit]) => `${name} ${kind} ${unit}: ${symbols}`,
    );
    expect(wanted.length).toBeGreaterThan(50);
    expect(rows.sort()).toEqual(wanted.sort());
  });

  it('says what each of them is', () => {
    expect(rowsUnder('Quantities').filter((row) => (row[4] ?? '') === '')).toEqual([]);
  });
});
