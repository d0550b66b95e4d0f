/**
 * The plan of a yard as a drawing to look at: everything drawn on the plan with its word, the ground where the heater
 * may stand hatched, the heater with the clearances asked of it, the best spots numbered. Hundredths of a metre.
 */
import { place, quantity } from '@firstfire/engine';
import type { JobView, JudgedSpot, MappedYard } from '@firstfire/job';
import { figureText, fill, type Reader } from '@firstfire/words';
import { oneLine } from '../visible.ts';
import { KINDS } from './kinds.ts';

export interface Drawing {
  readonly yard: MappedYard;
  readonly name: string;
  readonly view: JobView;
  readonly reader: Reader;
}

const UNIT = 100;
/** Around the yard, m: room for words that run over its edge. */
const EDGE = 1;
const LETTER = 28;
const LINES_BELOW = 6;

/** Plan coordinates to the page, whose y runs down. */
interface Page {
  readonly x: (metres: number) => number;
  readonly y: (metres: number) => number;
  readonly width: number;
  readonly height: number;
}

function pageOf({ question }: MappedYard): Page {
  const { x, y, width, height } = place.boundsOf(question.yard);
  const round = (value: number): number => Math.round(value * 10) / 10;
  return {
    x: (metres) => round((metres - x + EDGE) * UNIT),
    y: (metres) => round((y + height - metres + 2 * EDGE) * UNIT),
    width: Math.ceil((width + 2 * EDGE) * UNIT),
    height: Math.ceil((height + 3 * EDGE) * UNIT + (LINES_BELOW + 1) * 1.5 * LETTER),
  };
}

export function yardAsSvg(drawing: Drawing): string {
  const { yard } = drawing;
  const page = pageOf(yard);
  const rank = Object.keys(KINDS);
  const things = yard.question.drawn.toSorted((a, b) => rank.indexOf(a.kind) - rank.indexOf(b.kind));
  const title = titleOf(drawing);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${page.width} ${page.height}" font-family="sans-serif" font-size="${LETTER}">`,
    `<title>${escaped(title)}</title>`,
    `<defs><pattern id="hatch" width="14" height="14" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V14" stroke="#555" stroke-width="3"/></pattern></defs>`,
    `<rect width="${page.width}" height="${page.height}" fill="#fff"/>`,
    text({ x: UNIT * EDGE, y: 0.8 * UNIT }, title, 'font-size="40"'),
    `<g fill="url(#hatch)">${allowedRuns(yard, page).join('')}</g>`,
    ...things.map((one) => thingShape(one, page)),
    ...(yard.drawn === undefined ? [] : heaterShape(yard, yard.drawn, page)),
    ...things.map((one) => thingLabel(one, drawing, page)),
    ...yard.best.map((spot, i) => spotShape(yard, { spot, number: i + 1 }, page)),
    ...legend(drawing, page),
    '</svg>',
    '',
  ].join('\n');
}

function titleOf({ view, name, reader }: Drawing): string {
  const job = view.record('job', '-').reading('name')?.value;
  const slots = { job: typeof job === 'string' ? oneLine(job) : '', name: oneLine(name) };
  return fill(reader.speech.words.phrases['yard.svg.title'] ?? '', slots);
}

/** A box for each run of spots of a row that are allowed. */
function allowedRuns({ map }: MappedYard, page: Page): string[] {
  const { margins, columns, rows, step } = map;
  const runs: string[] = [];
  for (let row = 0; row < rows; row += 1) {
    let from = -1;
    for (let column = 0; column <= columns; column += 1) {
      const allowed = column < columns && (margins[row * columns + column] ?? Number.NaN) >= 0;
      if (allowed && from < 0) from = column;
      if (allowed || from < 0) continue;
      const left = map.x + (from - 0.5) * step;
      const top = map.y + (row + 0.5) * step;
      const width = Math.round((column - from) * step * UNIT * 10) / 10;
      const height = Math.round(step * UNIT * 10) / 10;
      runs.push(`<rect x="${page.x(left)}" y="${page.y(top)}" width="${width}" height="${height}"/>`);
      from = -1;
    }
  }
  return runs;
}

type Thing = MappedYard['question']['drawn'][number];

function thingShape({ corners, closed, kind, growth }: Thing, page: Page): string {
  const { line = 3, dash = '' } = KINDS[kind] ?? {};
  const ends = pathOf(corners, closed, page);
  const dashes = dash === '' ? '' : ` stroke-dasharray="${dash}"`;
  const [first] = corners;
  const dot =
    corners.length === 1 && first !== undefined
      ? `<circle cx="${page.x(first.x)}" cy="${page.y(first.y)}" r="10" fill="#222"/>`
      : `<path d="${ends}" fill="${closed && kind === 'building' ? '#ddd' : 'none'}" stroke="#222" stroke-width="${line}"${dashes}/>`;
  return growth > 0 ? `${grownShape({ corners, closed, growth }, page)}${dot}` : dot;
}

/** What a thing may grow or reach to, dotted: a thick line around it. */
function grownShape(
  { corners, closed, growth }: Pick<Thing, 'corners' | 'closed' | 'growth'>,
  page: Page,
): string {
  return corners
    .map(({ x, y }) => `<circle cx="${page.x(x)}" cy="${page.y(y)}" r="${growth * UNIT}"/>`)
    .concat(corners.length > 1 ? [`<path d="${pathOf(corners, closed, page)}"/>`] : [])
    .join('')
    .replace(
      /^.*$/,
      (shapes) => `<g fill="none" stroke="#222" stroke-width="2" stroke-dasharray="2 8">${shapes}</g>`,
    );
}

function pathOf(corners: readonly place.Point[], closed: boolean, { x, y }: Page): string {
  const points = corners.map((one) => `${x(one.x)} ${y(one.y)}`);
  return `M${points.join('L')}${closed ? 'Z' : ''}`;
}

function thingLabel({ id, kind, corners }: Thing, { view, reader }: Drawing, page: Page): string {
  const name = view.record('planObjects', id).reading('name')?.value;
  const word = reader.speech.words.phrases[KINDS[kind]?.word ?? ''] ?? kind;
  const label = typeof name === 'string' && name !== '' ? oneLine(name) : word;
  const middle = (axis: 'x' | 'y'): number =>
    corners.reduce((sum, corner) => sum + corner[axis], 0) / corners.length;
  // A ring around everything has its name at its corner.
  const [first] = corners;
  const at = kind === 'property line' && first !== undefined ? first : { x: middle('x'), y: middle('y') };
  return text({ x: page.x(at.x) + 12, y: page.y(at.y) - 12 }, label, HALO);
}

/** White behind letters, so that they can be read on a line. */
const HALO = 'stroke="#fff" stroke-width="6" paint-order="stroke"';

/** The box with a cross, its front thick, and what is asked before each side dashed. */
function heaterShape({ question }: MappedYard, { at, turn }: JudgedSpot, page: Page): string[] {
  const { faces, heater } = question;
  const box = place.footprint({ ...heater, at, turn });
  const [a, b, c, d] = box;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  const around = place
    .footprint({
      ...heater,
      at: { x: 0, y: 0 },
      turn: 0,
      width: heater.width + faces.left + faces.right,
      depth: heater.depth + faces.front + faces.back,
    })
    .map(({ x, y }) => ({ x: x + (faces.right - faces.left) / 2, y: y + (faces.back - faces.front) / 2 }))
    .map((corner) => place.turned(corner, turn))
    .map(({ x, y }) => ({ x: x + at.x, y: y + at.y }));
  return [
    `<path d="${pathOf(around, true, page)}" fill="none" stroke="#000" stroke-width="3" stroke-dasharray="14 8"/>`,
    `<path d="${pathOf(box, true, page)}${pathOf([a, c], false, page)}${pathOf([b, d], false, page)}" fill="none" stroke="#000" stroke-width="4"/>`,
    `<path d="${pathOf([a, b], false, page)}" fill="none" stroke="#000" stroke-width="12"/>`,
  ];
}

function spotShape(
  { question }: MappedYard,
  { spot, number }: { readonly spot: JudgedSpot; readonly number: number },
  page: Page,
): string {
  const box = place.footprint({ ...question.heater, at: spot.at, turn: spot.turn });
  const front = box.slice(0, 2);
  const at = { x: page.x(spot.at.x), y: page.y(spot.at.y) + LETTER / 3 };
  return [
    `<path d="${pathOf(box, true, page)}" fill="#fff" fill-opacity="0.7" stroke="#000" stroke-width="3"/>`,
    `<path d="${pathOf(front, false, page)}" stroke="#000" stroke-width="9"/>`,
    text(at, String(number), 'text-anchor="middle"'),
  ].join('');
}

function legend({ yard, reader }: Drawing, page: Page): string[] {
  const { phrases } = reader.speech.words;
  const below = page.height - LINES_BELOW * 1.5 * LETTER;
  const keys = [
    'yard.svg.hatched',
    ...(yard.drawn === undefined ? [] : ['yard.svg.heater']),
    'yard.svg.spots',
    'yard.svg.growth',
  ];
  const bar = scaleBar(reader);
  const lines = keys.map((key, i) =>
    text({ x: UNIT * EDGE, y: below + (i + 1) * 1.5 * LETTER }, phrases[key] ?? ''),
  );
  const y = below;
  return [
    `<path d="M${UNIT * EDGE} ${y - 10}v10h${Math.round(bar * UNIT)}v-10" fill="none" stroke="#000" stroke-width="4"/>`,
    text({ x: UNIT * EDGE + bar * UNIT + 16, y }, figureText(bar, 'length', { ...reader, medium: 'water' })),
    ...lines,
  ];
}

/** 10 ft or 3 m: one of them. */
function scaleBar({ system }: Reader): number {
  return system === 'us' ? 10 * quantity.FOOT : 3;
}

function text({ x, y }: place.Point, words: string, more = ''): string {
  return `<text x="${x}" y="${y}"${more === '' ? '' : ` ${more}`}>${escaped(words)}</text>`;
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};
/** Signs that XML cannot hold. */
const NO_XML = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

function escaped(words: string): string {
  return words.replace(NO_XML, '\ufffd').replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);
}
