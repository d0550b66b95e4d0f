/** A swap begun: what is asked of the old gas pipe is what the code's sizing of it waits for, the house load with it. */
import {
  type Edit,
  fold,
  type JobView,
  jobViewOf,
  type StoredOperation,
  study,
  writeGroup,
} from '@firstfire/job';
import { findingId } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { isKnown, oldPipe } from '../../src/next/old-pipe.ts';
import { newSite, swap } from '../../src/next/templates.ts';

const SITE = {
  name: 'A',
  country: 'US',
  region: '',
  fuel: 'natural',
  basin: 'pool',
  where: 'outdoors',
} as const;

function viewOf(edits: readonly Edit[]): JobView {
  const writer = { doc: 'a', replica: 'r', author: 'me', now: Date.parse('2026-10-01') };
  const written = writeGroup(fold([], 'a'), [{ type: 'create' }, ...edits], writer);
  if (!written.ok) throw new Error('not written');
  return jobViewOf(fold(written.operations as readonly StoredOperation[], 'a'));
}

function missing(view: JobView, finding: string): readonly string[] {
  const { lines } = study(view, { today: '2026-10-01', uncertainty: false });
  return lines.flatMap((line) => line.findings).find((one) => findingId(one) === finding)?.missing ?? [];
}

describe('a swap', () => {
  const view = viewOf(swap(SITE));

  it('asks six readings of the old pipes, and with the new plate nothing else is missing', () => {
    const six = oldPipe(view);
    expect(six).toHaveLength(6);
    expect(six.every((path) => !isKnown(view, path))).toBe(true);
    const gas = six.filter((path) => path.startsWith('gas'));
    expect([...missing(view, 'gas.section-capacity@s1')].sort()).toEqual([...gas, 'heaters/h1/input'].sort());
    expect([...missing(view, 'water.heater-flow@h1 v1 clean')].sort()).toEqual([
      'heaters/h1/flowGreatest',
      'heaters/h1/flowLeast',
      'waterLoop/-/flowFound',
    ]);
  });

  it('says nothing of a filter that is due: for that the loop is needed', () => {
    expect(missing(view, 'water.heater-flow@h1 v1 dirty')).toContain('pumps/p1/curve');
  });
});

describe('a new site', () => {
  it('is joined to the supply, and hangs no lump on it', () => {
    const lacks = missing(viewOf(newSite(SITE)), 'gas.section-capacity@s1');
    expect(lacks).not.toContain('gasSupply/-/existingLoad');
    expect(lacks).not.toContain('gasSegments/s1/from');
    expect(lacks).toContain('gasSegments/s1/length');
  });
});
