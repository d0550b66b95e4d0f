/** The files of the repository, as the checks read them. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

const SKIPPED = new Set(['node_modules', '.git', '.cache', 'coverage', 'dist']);

/** Paths below a folder, relative to the root, that end as asked. */
export function filesIn(folder: string, ending: string): string[] {
  const found: string[] = [];
  const walk = (at: string): void => {
    for (const name of readdirSync(at)) {
      if (SKIPPED.has(name)) continue;
      const path = join(at, name);
      if (statSync(path).isDirectory()) walk(path);
      else if (name.endsWith(ending)) found.push(relative(ROOT, path));
    }
  };
  if (existsSync(join(ROOT, folder))) walk(join(ROOT, folder));
  return found.sort();
}

/** Sources without their tests. */
export function sourcesIn(folder: string): string[] {
  return [...filesIn(folder, '.ts'), ...filesIn(folder, '.tsx')].filter((path) => !path.endsWith('.test.ts'));
}

export function textOf(path: string): string {
  return readFileSync(resolve(ROOT, path), 'utf8');
}
