import { describe, expect, it } from 'vitest';
import { defineRule, type Edition } from './rule.ts';

type Editions = readonly Edition<Record<string, never>>[];

function ruleOf(editions: Editions) {
  return defineRule({
    id: 'gas.test',
    line: 'gas',
    scope: 'job',
    numbers: {},
    words: { fuel: 'job.fuel' },
    editions,
    check: (_n, w) => ({ sense: 'holds', holds: w.fuel === 'natural' }),
  });
}

const ENTRY = { edition: 'any', from: '1900-01-01', values: {} } as const;

describe('a rule without citation', () => {
  it('is refused by its types', () => {
    // @ts-expect-error An entry cites its source.
    const uncited: Editions = [ENTRY];
    expect(uncited).toHaveLength(1);
  });

  it('stops whatever loads it', () => {
    expect(() => ruleOf([])).toThrow('gas.test cites nothing');
    const source = { document: ' ', known: 'from memory' } as const;
    expect(() => ruleOf([{ ...ENTRY, source }])).toThrow('gas.test cites nothing in any');
  });

  it('is none where it cites a document', () => {
    const source = { document: 'a code', at: '1.1', known: 'from memory' } as const;
    expect(ruleOf([{ ...ENTRY, source }]).editions).toHaveLength(1);
  });
});
