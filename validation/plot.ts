/** A drawing of the published figures: for each area, how many stand how far from ours in parts of their band. */
import type { Row } from './run.ts';
import { areasOf } from './summary.ts';

/** Upper edges of the classes, in parts of the band; the last class lies outside. */
const EDGES = [0.25, 0.5, 0.75, 1, Number.POSITIVE_INFINITY];
const NAMES = ['to a quarter', 'to a half', 'to three quarters', 'to the edge', 'outside'];
const COLOURS = ['#1b5e7a', '#4a90a8', '#8fbfcf', '#d7e6ec', '#c0492f'];

const LEFT = 110;
const WIDTH = 520;
const STEP = 22;
const TOP = 44;

function classes(rows: readonly Row[]): readonly number[] {
  const counts = EDGES.map(() => 0);
  for (const { ofBand } of rows.flatMap(({ deviations }) => deviations)) {
    const at = EDGES.findIndex((edge) => ofBand <= edge);
    const place = at < 0 ? EDGES.length - 1 : at;
    counts[place] = (counts[place] ?? 0) + 1;
  }
  return counts;
}

function bar(counts: readonly number[], y: number): string {
  const total = counts.reduce((sum, count) => sum + count, 0);
  let x = LEFT;
  return counts
    .map((count, i) => {
      const width = Math.round((count / total) * WIDTH);
      const box = `<rect x="${x}" y="${y}" width="${width}" height="14" fill="${COLOURS[i]}"/>`;
      x += width;
      return count > 0 ? box : '';
    })
    .join('');
}

function line([area, rows]: readonly [string, readonly Row[]], index: number): string {
  const y = TOP + index * STEP;
  const counts = classes(rows);
  const total = counts.reduce((sum, count) => sum + count, 0);
  return [
    `<text x="${LEFT - 8}" y="${y + 11}" text-anchor="end">${area}</text>`,
    bar(counts, y),
    `<text x="${LEFT + WIDTH + 8}" y="${y + 11}">${total}</text>`,
  ].join('');
}

function legend(): string {
  return NAMES.map((name, i) => {
    const x = LEFT + i * 106;
    return `<rect x="${x}" y="14" width="10" height="10" fill="${COLOURS[i]}"/><text x="${x + 14}" y="23">${name}</text>`;
  }).join('');
}

/** The drawing as a file of SVG. */
export function bandsDrawing(rows: readonly Row[]): string {
  const areas = areasOf(rows.filter((row) => row.suite.kind === 'published'));
  const height = TOP + areas.length * STEP + 8;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${LEFT + WIDTH + 60} ${height}" font-family="sans-serif" font-size="11">`,
    '<title>Deviation of published figures from ours, in parts of the band of their source</title>',
    '<rect width="100%" height="100%" fill="#ffffff"/>',
    legend(),
    ...areas.map(line),
    '</svg>\n',
  ].join('\n');
}
