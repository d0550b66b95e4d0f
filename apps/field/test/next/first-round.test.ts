/** The first round: fewer readings than half, a figure in every line, and the same while it is walked. */
import {
  type Edit,
  fold,
  type JobView,
  jobViewOf,
  type StoredOperation,
  study,
  writeGroup,
} from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { readingOf } from '../../src/entry/reading.ts';
import { keyRules } from '../../src/next/first-round.ts';
import { conflictsOf, wideOf } from '../../src/next/leaving.ts';
import { roundsOf } from '../../src/next/rounds.ts';
import { newSite } from '../../src/next/templates.ts';

const SITE = {
  name: 'A',
  country: 'US',
  region: '',
  fuel: 'natural',
  basin: 'pool',
  where: 'outdoors',
} as const;

const WRITER = { doc: 'a', replica: 'r', author: 'me', now: Date.parse('2026-10-01') };

function documentOf(edits: readonly Edit[]) {
  const written = writeGroup(fold([], 'a'), [{ type: 'create' }, ...edits], WRITER);
  if (!written.ok) throw new Error('not written');
  return fold(written.operations as readonly StoredOperation[], 'a');
}

function nowOf(view: JobView, uncertainty = false) {
  return { view, study: study(view, { today: '2026-10-01', uncertainty }) };
}

function set(collection: string, element: string | undefined, field: string, made: object): Edit {
  const value = readingOf({ value: 0, how: 'measured', ...made });
  return { type: 'set', collection, ...(element === undefined ? {} : { element }), field, value };
}

describe('the first round', () => {
  const blank = jobViewOf(documentOf(newSite(SITE)));

  it('is less than half of what is missing, and leaves no line out', () => {
    const { first, rest } = roundsOf(nowOf(blank));
    expect(first.length).toBeLessThan(rest.length);
    const lines = new Set([...keyRules(blank)].map((rule) => rule.split('.')[0]));
    expect([...lines].sort()).toEqual(['air', 'gas', 'heat', 'place', 'power', 'water']);
  });

  it('asks what an installer reads first: common practice, no source', () => {
    const first = roundsOf(nowOf(blank)).first.map(({ path }) => path);
    for (const path of [
      'gasSupply/-/setPressure',
      'gasSegments/s1/size',
      'gasSegments/s1/length',
      'heaters/h1/input',
      'basins/pool/depthShallow',
      'basins/pool/cover',
      'waterRuns/suction/size',
      'circuits/c1/conductor',
      'circuits/c1/voltsIdle',
      'spots/spot1/clearanceBack',
    ])
      expect(first).toContain(path);
    expect(first).not.toContain('job/-/permitGas');
  });

  it('does not change when readings come in', () => {
    const before = [...keyRules(blank)];
    const read = jobViewOf(
      documentOf([
        ...newSite(SITE),
        set('gasSegments', 's1', 'length', { value: 40, unit: 'ft' }),
        set('waterLoop', undefined, 'bypass', { value: 'none' }),
        set('bonding', undefined, 'perimeter', { value: 'none' }),
      ]),
    );
    expect([...keyRules(read)]).toEqual(before);
  });

  it('leaves out what could not be got', () => {
    const { first } = roundsOf(nowOf(blank), new Set(['heaters/h1/input']));
    expect(first.map(({ path }) => path)).not.toContain('heaters/h1/input');
  });
});

describe('before leaving', () => {
  const clearance = (pm: number): Edit[] => [
    ...newSite(SITE),
    set('heaters', 'h1', 'clearanceBack', { value: 6, unit: 'in', how: 'nameplate' }),
    set('spots', 'spot1', 'clearanceBack', { value: 8, unit: 'in', pm }),
  ];

  it('names what only the ± keeps from being sure, by the readings that can be taken again', () => {
    // 8 in ± 3 in may be less than the 6 in of the plate, 8 in ± 0.5 in may not.
    const wide = (pm: number) => {
      const { view, study: found } = nowOf(jobViewOf(documentOf(clearance(pm))), true);
      return wideOf(view, found).filter(({ finding }) => finding.rule === 'place.clearance');
    };
    expect(wide(3).map(({ readings }) => readings)).toEqual([['spots/spot1/clearanceBack']]);
    expect(wide(0.5)).toEqual([]);
  });

  it('names readings with two values', () => {
    const document = documentOf(newSite(SITE));
    expect(conflictsOf(document)).toEqual([]);
    const operations = ['b', 'c'].flatMap((replica, i) => {
      const edits = [set('job', undefined, 'name', { value: `N${i}`, how: 'told' })];
      const written = writeGroup(document, edits, { ...WRITER, replica, now: WRITER.now + 1000 });
      if (!written.ok) throw new Error('not written');
      return written.operations as readonly StoredOperation[];
    });
    const begun = writeGroup(fold([], 'a'), [{ type: 'create' }, ...newSite(SITE)], WRITER);
    if (!begun.ok) throw new Error('not written');
    const both = fold([...(begun.operations as readonly StoredOperation[]), ...operations], 'a');
    expect(conflictsOf(both)).toEqual(['job/-/name']);
  });
});
