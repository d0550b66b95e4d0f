/** The house: imports point downwards only, and each package has one public door. */
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesIn, sourcesIn, textOf } from './tree.ts';

const BELOW: Readonly<Record<string, readonly string[]>> = {
  'packages/engine': [],
  'packages/reference': ['@firstfire/engine'],
  'packages/sums': ['@firstfire/engine', '@firstfire/reference'],
  'packages/job': ['@firstfire/engine', '@firstfire/reference'],
  'packages/words': ['@firstfire/engine', '@firstfire/reference', '@firstfire/job', '@firstfire/sums'],
};

const DISCIPLINES = [
  'heat',
  'gas',
  'water',
  'air',
  'power',
  'place',
  'chemistry',
  'combustion',
  'efficiency',
  'handling',
  'relief',
];

const IMPORT = /(?:from|import)\s+'([^']+)'/g;

function importsOf(path: string): string[] {
  return [...textOf(path).matchAll(IMPORT)].map((match) => match[1] ?? '');
}

describe('imports', () => {
  it.each(Object.entries(BELOW))('%s uses only what stands below it', (folder, allowed) => {
    const wrong = filesIn(`${folder}/src`, '.ts').flatMap((path) =>
      importsOf(path)
        .filter((name) => name.startsWith('@firstfire/') && !allowed.includes(name))
        .map((name) => `${path} → ${name}`),
    );
    expect(wrong).toEqual([]);
  });

  it('reach a package through its door only', () => {
    const deep = ['packages', 'apps', 'validation', 'bench', 'examples'].flatMap((folder) =>
      filesIn(folder, '.ts').flatMap((path) =>
        importsOf(path)
          .filter((name) => /^@firstfire\/[^/]+\/./.test(name))
          .map((name) => `${path} → ${name}`),
      ),
    );
    expect(deep).toEqual([]);
  });

  it('keep the disciplines of the engine apart', () => {
    const crossing = sourcesIn('packages/engine/src').flatMap((path) => {
      const own = path.split('/')[3] ?? '';
      if (!DISCIPLINES.includes(own)) return [];
      return importsOf(path)
        .filter((name) => name.startsWith('.'))
        .map((name) => posix.join(posix.dirname(path), name))
        .filter((target) => DISCIPLINES.includes(target.split('/')[3] ?? '') && target.split('/')[3] !== own)
        .map((target) => `${path} → ${target}`);
    });
    expect(crossing).toEqual([]);
  });

  it('never bring the world into the pure packages', () => {
    const worldly = Object.keys(BELOW).flatMap((folder) =>
      sourcesIn(`${folder}/src`).flatMap((path) =>
        importsOf(path)
          .filter((name) => name.startsWith('node:'))
          .map((name) => `${path} → ${name}`),
      ),
    );
    expect(worldly).toEqual([]);
  });
});
