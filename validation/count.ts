/** How published figures are counted: by document, none for more than a quarter of the whole. */
import { inside, type Row } from './run.ts';

/** No one document may make up more than this share of the count. */
const GREATEST_SHARE = 0.25;

export interface Count {
  /** Published figures inside their band, by document, largest first. */
  readonly byDocument: readonly (readonly [document: string, cases: number])[];
  readonly total: number;
  /** The same with every document held to a quarter of what then remains. */
  readonly fair: number;
}

type Counted = Pick<Row, 'suite' | 'cases' | 'outside'>;

export function countPublished(rows: readonly Counted[]): Count {
  const byDocument = new Map<string, number>();
  for (const row of rows) {
    if (row.suite.kind !== 'published') continue;
    const { document } = row.suite;
    byDocument.set(document, (byDocument.get(document) ?? 0) + inside(row));
  }
  const sorted = [...byDocument].sort((a, b) => b[1] - a[1]);
  const parts = sorted.map(([, cases]) => cases);
  const total = parts.reduce((sum, part) => sum + part, 0);
  return { byDocument: sorted, total, fair: fairCount(parts, total) };
}

/** The largest total in which no part exceeds its share of the whole: parts above it are cut down to it. */
function fairCount(parts: readonly number[], total: number): number {
  let fair = total;
  for (let round = 0; round < 100; round += 1) {
    const cap = Math.floor(fair * GREATEST_SHARE);
    const next = parts.reduce((sum, part) => sum + Math.min(part, cap), 0);
    if (next === fair) return fair;
    fair = next;
  }
  return fair;
}
