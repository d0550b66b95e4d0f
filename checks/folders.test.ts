/** Folder rules: what lies where, and how long a file may get before it is two things. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesIn, ROOT, sourcesIn, textOf } from './tree.ts';

/** Tables are long by nature. */
const TABLES = /\/(catalog|data)\//;

describe('folders', () => {
  it('hold no source file over 300 lines of code', () => {
    const long = ['packages', 'apps', 'checks', 'validation', 'bench', 'tools']
      .flatMap(sourcesIn)
      .filter((path) => !TABLES.test(path) && !path.startsWith('validation/'))
      .filter(
        (path) =>
          textOf(path)
            .replace(/\/\*[\s\S]*?\*\//g, '')
            .split('\n').length > 300,
      );
    expect(long).toEqual([]);
  });

  it('of the packages have one door each', () => {
    for (const name of readdirSync(join(ROOT, 'packages'))) {
      const manifest = JSON.parse(textOf(`packages/${name}/package.json`)) as { exports: unknown };
      expect(manifest.exports, name).toBe('./src/index.ts');
    }
  });

  it('hold a page for every decision, with its three parts', () => {
    const pages = filesIn('docs/decisions', '.md');
    expect(pages.length).toBeGreaterThan(0);
    for (const page of pages) {
      for (const part of ['## Context', '## Decision', '## Consequences'])
        expect(textOf(page), page).toContain(part);
    }
  });

  it('carry no `any` and nothing left unfinished', () => {
    const words = new RegExp(['TO' + 'DO', 'FIX' + 'ME', 'X' + 'XX'].join('|'));
    const marked = ['packages', 'apps', 'validation', 'bench', 'tools']
      .flatMap(sourcesIn)
      .filter((path) => words.test(textOf(path)));
    expect(marked).toEqual([]);
  });
});
