/** Every public function and formula of the engine says what a reader must know before relying on it. */
import { describe, expect, it } from 'vitest';
import { sourcesIn, textOf } from './tree.ts';

const DECLARATION = /^export (?:async )?(?:function|const|class) (\w+)/gm;

/** Names exported in a file without a doc block right above them. */
function undocumented(path: string): string[] {
  const text = textOf(path);
  return [...text.matchAll(DECLARATION)]
    .filter((match) => !text.slice(0, match.index).trimEnd().endsWith('*/'))
    .map((match) => `${path}: ${match[1]}`);
}

/** Files that declare a formula must carry these words, in the file's block or the formula's own. */
const PARTS = ['Source', 'Range', 'Errors', 'Worked example'] as const;

function missingParts(path: string): string[] {
  const text = textOf(path);
  if (!/: Formula<\w+> = \{/.test(text)) return [];
  const blocks = (text.match(/\/\*\*[\s\S]*?\*\//g) ?? []).join('\n').toLowerCase();
  return PARTS.filter((part) => !blocks.includes(part.toLowerCase())).map((part) => `${path}: ${part}`);
}

describe('doc blocks of the engine', () => {
  const sources = sourcesIn('packages/engine/src').filter((path) => !path.endsWith('index.ts'));

  it('finds the engine', () => {
    expect(sources.length).toBeGreaterThan(20);
  });

  it('stand above every exported function and formula', () => {
    const bare = sources.flatMap(undocumented).filter((name) => !/: [A-Z][A-Z0-9_]+$/.test(name));
    expect(bare).toEqual([]);
  });

  it('state source, range, errors and a worked example wherever a formula is declared', () => {
    expect(sources.flatMap(missingParts)).toEqual([]);
  });
});
