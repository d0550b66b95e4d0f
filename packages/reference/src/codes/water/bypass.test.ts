import { describe, expect, it } from 'vitest';
import { evaluateRules, type Fact, type Subject } from '../../evaluate/index.ts';
import { bypassRange } from './bypass.ts';

const JOB: Subject = { scope: 'job', id: '-', label: '' };
const STATES = ['low', 'high', 'other'].map((id): Subject => ({ scope: 'water-state', id, label: id }));

function betweenOf(ids: string): readonly string[] | undefined {
  const words: Readonly<Record<string, string>> = {
    'job.bypass-found': 'conflict',
    'job.bypass-between': ids,
  };
  const book = {
    subjects: (scope: string) => (scope === 'job' ? [JOB] : STATES),
    fact: (_subject: Subject, name: string): Fact => ({ state: 'word', value: words[name] ?? '' }),
  };
  const profile = { place: { country: 'US' }, date: '2026-10-01', editions: [], uncovered: [] };
  return evaluateRules([bypassRange], book, profile)[0]?.between?.map(({ id }) => id);
}

describe('a bypass that suits no opening', () => {
  it('names the states it fails between', () => {
    expect(betweenOf('high|low')).toEqual(['high', 'low']);
    expect(betweenOf('other')).toEqual(['other']);
  });

  it('leaves out a state that is none', () => {
    expect(betweenOf('low||gone')).toEqual(['low']);
    expect(betweenOf('')).toEqual([]);
  });
});
