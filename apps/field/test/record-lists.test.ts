/** Which readings a line lists, in which order, and which it folds. */
import { readFileSync } from 'node:fs';
import { jobViewOf, RECORD_BY_COLLECTION, readJobFile, study } from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { COLLECTIONS_OF } from '../src/next/collections.ts';
import { recordLists } from '../src/ui/record-lists.ts';

function example(name: string) {
  const read = readJobFile(
    readFileSync(new URL(`../../../examples/${name}.job.json`, import.meta.url), 'utf8'),
  );
  if (!read.ok) throw new Error(name);
  const view = jobViewOf(read.value.document);
  return { view, lines: study(view, { today: '2026-10-01', uncertainty: false }).lines };
}

describe.each(['house-pool', 'public-pool', 'swap', 'unfinished', 'winter-propane'])('of %s', (name) => {
  const { view, lines } = example(name);

  it.each(Object.keys(COLLECTIONS_OF))('%s lists every reading once and whatever it lacks first', (line) => {
    const findings = lines.find((one) => one.line === line)?.findings ?? [];
    const lists = recordLists(view, line, findings);
    const paths = lists.flatMap(({ missing, known, unasked }) => [...missing, ...known, ...unasked]);
    expect(new Set(paths.map((one) => one.path)).size).toBe(paths.length);
    const lacking = new Set(findings.flatMap((one) => one.missing));
    // What a rule lacks may be a whole record, which has no row of its own yet.
    const fields = [...lacking].filter((path) => path.split('/').length === 3);
    const rows = lists.flatMap(({ missing }) => missing.map((one) => one.path));
    const known = (path: string): boolean => {
      const [collection = '', , field = ''] = path.split('/');
      return Object.hasOwn(RECORD_BY_COLLECTION.get(collection)?.fields ?? {}, field);
    };
    expect(rows.sort()).toEqual(fields.filter(known).sort());
    for (const { known: there, unasked } of lists) {
      expect(there.every(({ reading }) => reading !== undefined)).toBe(true);
      expect(unasked.every(({ reading, path }) => reading === undefined && !lacking.has(path))).toBe(true);
    }
  });
});

it('lists what a line lacks of a record that stands on another line', () => {
  const { view, lines } = example('unfinished');
  const power = lines.find((one) => one.line === 'power')?.findings ?? [];
  const heater = recordLists(view, 'power', power).find(({ collection }) => collection === 'heaters');
  expect(heater?.missing.map(({ field }) => field)).toContain('volts');
  expect(heater?.unasked).toEqual([]);
});
