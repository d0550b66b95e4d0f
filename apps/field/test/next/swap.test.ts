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

  it('asks five readings of the old pipe, and with the new plate nothing else is missing', () => {
    const five = oldPipe(view);
    expect(five).toHaveLength(5);
    expect(five.every((path) => !isKnown(view, path))).toBe(true);
    expect([...missing(view, 'gas.section-capacity@s1')].sort()).toEqual(
      [...five, 'heaters/h1/input'].sort(),
    );
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
