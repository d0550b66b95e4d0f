/** The top of the validation page: how many figures, how many inside their source's own accuracy, and the worst. */
import { countPublished } from './count.ts';
import { farthest, inside, type Row } from './run.ts';
import type { Deviation, Misfit, Suite, SuiteKind } from './suite.ts';
import { figure, sharePercent, table, times, wholePercent } from './table.ts';

const KINDS: readonly (readonly [SuiteKind, string])[] = [
  ['published', 'printed in a document, in the band of the document’s own accuracy'],
  ['stored', 'worked out once by an independent program, or from a standard’s own constants'],
  ['library', 'a general-purpose library run beside ours'],
  ['estimate', 'a published figure beside an estimate of ours, in a band that we found'],
  ['practice', 'common practice, or recalled from memory'],
];

const sum = (rows: readonly Row[], of: (row: Row) => number): number =>
  rows.reduce((total, row) => total + of(row), 0);

const figures = (rows: readonly Row[]): number => sum(rows, (row) => row.cases + row.misfits);

function tally(name: string, rows: readonly Row[]): readonly string[] {
  const all = figures(rows);
  const agree = sum(rows, inside);
  const sources = new Set(rows.map(({ suite }) => suite.document)).size;
  return [name, String(sources), String(all), String(agree), sharePercent(agree, all)];
}

export function summary(rows: readonly Row[]): string {
  const published = rows.filter((row) => row.suite.kind === 'published');
  const { byDocument, total, fair } = countPublished(rows);
  const carried = published.filter((row) => row.suite.carried);
  const all = figures(published);
  return [
    `**${all} published figures from ${byDocument.length} documents; ${total} of them (${sharePercent(total, all)}) lie inside their source’s own accuracy.** With no document counted for more than a quarter, **${fair}**. ${sum(carried, inside)} of the ${total} are carried by a rule or a table as they are printed, and only the carrying is checked; the other ${total - sum(carried, inside)} are computed. The other kinds below are run as well and not counted.`,
    table(
      ['kind', 'sources', 'figures', 'inside the band', 'share'],
      KINDS.map(([kind, what]) => tally(`*${kind}*: ${what}`, ofKind(rows, kind))),
    ),
    '### Published figures by area',
    table(['area', 'documents', 'figures', 'inside', 'share', 'nearest the edge'], byArea(published)),
    '![How far published figures stand from ours, in parts of their band, by area](validation-bands.svg)',
  ].join('\n\n');
}

const ofKind = (rows: readonly Row[], kind: SuiteKind): readonly Row[] =>
  rows.filter((row) => row.suite.kind === kind);

export function areasOf(rows: readonly Row[]): readonly (readonly [area: string, rows: readonly Row[]])[] {
  const areas = new Map<string, Row[]>();
  for (const row of rows) areas.set(row.suite.area, [...(areas.get(row.suite.area) ?? []), row]);
  return [...areas].sort(([a], [b]) => (a < b ? -1 : 1));
}

function byArea(published: readonly Row[]): readonly (readonly string[])[] {
  return areasOf(published).map(([area, rows]) => [
    ...tally(area, rows),
    wholePercent(Math.max(...rows.map(({ worst }) => worst))),
  ]);
}

/** A deviation and why it stands where it does. */
interface Told {
  readonly suite: Suite;
  readonly farthest: Deviation;
  readonly because: string;
  readonly figures: number;
}

const farFirst = (a: Told, b: Told): number => b.farthest.ofBand - a.farthest.ofBand;

/** The figure of each misfit that stands farthest out. */
function misfits(rows: readonly Row[]): readonly Told[] {
  return rows.flatMap(({ suite, deviations }) =>
    (suite.misfits ?? []).flatMap((misfit) => told(suite, misfit, deviations)),
  );
}

function told(suite: Suite, misfit: Misfit, deviations: readonly Deviation[]): readonly Told[] {
  const ids = new Set(misfit.cases);
  const worst = farthest(deviations.filter(({ id }) => ids.has(id)));
  return worst ? [{ suite, farthest: worst, because: misfit.because, figures: ids.size }] : [];
}

/** The figure of each suite that is nearest the edge of its band, or over it. */
function nearest(rows: readonly Row[]): readonly Told[] {
  return rows.flatMap(({ suite, worstCase, cases }) =>
    worstCase ? [{ suite, farthest: worstCase, because: suite.bandBecause, figures: cases }] : [],
  );
}

const HOW_MANY = 10;
const HEAD = ['source', 'figure', 'printed', 'ours', 'of the band'];

/** The ten farthest of all published figures, and the ten nearest the edge of those inside. */
export function tenWorst(rows: readonly Row[]): string {
  const published = rows.filter((row) => row.suite.kind === 'published');
  const outside = [...misfits(published)].sort(farFirst);
  const within = [...nearest(published)].sort(farFirst).slice(0, HOW_MANY);
  return [
    '## The ten worst',
    `Outside the source’s own accuracy, the farthest figure of each of the ${outside.length} misfits that are known, the ten farthest first; the rest are told below the tables they belong to.`,
    table(
      [...HEAD, 'alike', 'why'],
      outside.slice(0, HOW_MANY).map((one) => [...row(one, times), String(one.figures), one.because]),
    ),
    'Inside it, the ten nearest to its edge, one of a table:',
    table(
      [...HEAD, 'the band'],
      within.map((one) => [...row(one, wholePercent), one.because]),
    ),
  ].join('\n\n');
}

function row({ suite, farthest: { id, published, computed, ofBand } }: Told, say: (x: number) => string) {
  return [
    `${suite.document}, ${suite.at}: ${suite.quantity}`,
    id,
    figure(published),
    figure(computed),
    say(ofBand),
  ];
}
