/** Links of the documentation lead somewhere. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesIn, ROOT, textOf } from './tree.ts';

const LINK = /\[[^\]]*\]\(([^)\s]+)\)/g;

describe('documentation', () => {
  it('links to files that exist', () => {
    const pages = filesIn('.', '.md');
    expect(pages).toContain('README.md');
    const broken = pages.flatMap((page) =>
      [...textOf(page).matchAll(LINK)]
        .map((match) => (match[1] ?? '').split('#')[0] ?? '')
        .filter((target) => target !== '' && !/^https?:/.test(target))
        .filter((target) => !existsSync(join(ROOT, dirname(page), target)))
        .map((target) => `${page} → ${target}`),
    );
    expect(broken).toEqual([]);
  });
});
