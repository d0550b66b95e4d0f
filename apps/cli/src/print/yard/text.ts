/** Where each heater may stand, for a terminal: the count, the best spots with what limits each, and the map. */
import { type Issue, quantity } from '@firstfire/engine';
import type { HeaterYard, JobView, JudgedSpot, MappedYard, WayToFace } from '@firstfire/job';
import { figureText, fill, issueSentence, type Reader } from '@firstfire/words';
import { readingName, siteText } from '../job-text.ts';
import { wrap } from '../table.ts';
import { oneLine } from '../visible.ts';
import { GROUND, KINDS } from './kinds.ts';
import { signMap } from './map.ts';

const WIDTH = 100;

export function printYards(yards: readonly HeaterYard[], view: JobView, reader: Reader): string {
  const safety = wrap(reader.speech.words.phrases['safety'] ?? '', WIDTH, '');
  const texts = yards.map((one) => yardText(one, view, reader));
  return [siteText(view, reader), ...texts, safety].join('\n\n');
}

function yardText(one: HeaterYard, view: JobView, reader: Reader): string {
  const name = oneLine(one.name);
  if (one.state === 'known') return knownText(one.yard, { name, view, reader });
  const { words } = reader.speech;
  if (one.state === 'unknown') {
    const text = fill(words.phrases['missing'] ?? '', {
      readings: one.missing.map((issue) => needed(issue, reader)).join(', '),
    });
    return [name, wrap(`${words.verdicts.unknown}: ${text}`, WIDTH, '  ')].join('\n');
  }
  return [name, ...one.issues.map((issue) => wrap(issueText(issue, reader), WIDTH, '  '))].join('\n');
}

/** A reading that is missing; the property line is a thing of the plan rather than a reading. */
function needed({ where }: Issue, { speech }: Reader): string {
  return where === 'planObjects'
    ? (speech.words.phrases['yard.needs-line'] ?? '')
    : readingName(where, speech.words);
}

export function issueText(issue: Issue, reader: Reader): string {
  const { words } = reader.speech;
  const showIn = (value: number, kind: quantity.Kind | undefined): string =>
    figureText(value, kind, { ...reader, medium: 'water' });
  return issueSentence(issue, { words, show: showIn, name: (path) => readingName(path, words) });
}

interface Page {
  readonly name: string;
  readonly view: JobView;
  readonly reader: Reader;
}

function knownText(yard: MappedYard, page: Page): string {
  const { name, reader } = page;
  const { phrases } = reader.speech.words;
  const count = (value: number): string => whole(value, reader);
  const head = fill(phrases['yard.head'] ?? '', {
    name,
    allowed: count(yard.allowed),
    tried: count(yard.map.tried),
    step: length(yard.map.step, reader),
    turns: yard.question.turns.length,
  });
  const best = yard.best.map((spot, i) => spotRow(String(i + 1), spot, { yard, page }));
  const drawn = yard.drawn && spotRow(GROUND.heater.sign, yard.drawn, { yard, page });
  const rows = [...best, ...(drawn === undefined ? [] : [drawn])];
  const said = phrases[yard.best.length === 0 ? 'yard.nowhere' : 'yard.best'] ?? '';
  return [wrap(head, WIDTH, ''), wrap(said, WIDTH, ''), ...rows, '', mapText(yard, reader)].join('\n');
}

interface Around {
  readonly yard: MappedYard;
  readonly page: Page;
}

function spotRow(sign: string, spot: JudgedSpot, around: Around): string {
  const { reader } = around.page;
  const { phrases } = reader.speech.words;
  const where = fill(phrases['yard.spot'] ?? '', {
    x: length(spot.at.x, reader),
    y: length(spot.at.y, reader),
    front: lookText(spot.turn, reader),
  });
  const limit = limitText(spot, around);
  const ways = spot.connections === undefined ? '' : wayText(spot.connections, reader);
  const first = `${sign.padStart(4)}  ${marginOf(spot, reader).padStart(7)}  ${where}`;
  return [first, ...[limit, ways].filter(Boolean).map((line) => wrap(line, WIDTH, ' '.repeat(15)))].join(
    '\n',
  );
}

/** Down to a whole per cent; beyond a thousand it says nothing more. */
function marginOf({ limits, inYard, standsIn }: JudgedSpot, reader: Reader): string {
  if (!inYard || standsIn.length > 0) return '−';
  const percent = Math.floor(Math.min(10, limits[0]?.margin ?? 10) * 100 + 1e-9);
  const gap = reader.speech.figures.marks?.percent || ' ';
  return `${percent < 0 ? '−' : '+'}${whole(Math.abs(percent), reader)}${gap}%`;
}

function limitText({ limits, inYard, standsIn }: JudgedSpot, around: Around): string {
  const { reader } = around.page;
  const { phrases } = reader.speech.words;
  if (!inYard) return phrases['yard.outside'] ?? '';
  const [within] = standsIn;
  if (within !== undefined)
    return fill(phrases['yard.stands-in'] ?? '', { thing: thingName(within, around) });
  const [least] = limits;
  if (least === undefined) return phrases['yard.free'] ?? '';
  const slots = {
    thing: thingName(least.thing, around),
    found: length(least.found, reader),
    required: length(least.required, reader),
    face: least.face === undefined ? '' : (phrases[FACE[least.face]] ?? ''),
  };
  return fill(phrases[least.face === undefined ? 'yard.thing-limit' : 'yard.face-limit'] ?? '', slots);
}

const FACE = {
  left: 'yard.face.left',
  right: 'yard.face.right',
  back: 'yard.face.back',
  front: 'yard.face.front',
  above: 'yard.face.above',
} as const;

/** What people call a thing of the plan, or what kind it is. */
function thingName(index: number, { yard, page }: Around): string {
  const one = yard.question.things[index];
  if (one === undefined) return '';
  const name = page.view.record('planObjects', one.id).reading('name')?.value;
  if (typeof name === 'string' && name !== '') return oneLine(name);
  return page.reader.speech.words.phrases[KINDS[one.kind]?.word ?? ''] ?? one.kind;
}

/** Down, right, up and left of the page, as quarter turns of the heater. */
const LOOKS = ['yard.looks.down', 'yard.looks.right', 'yard.looks.up', 'yard.looks.left'] as const;

function lookText(turn: number, { speech }: Reader): string {
  const quarters = ((Math.round(turn / (Math.PI / 2)) % 4) + 4) % 4;
  return speech.words.phrases[LOOKS[quarters] ?? LOOKS[0]] ?? '';
}

const WAYS = {
  'as it stands': 'yard.way.stands',
  header: 'yard.way.header',
  turn: 'yard.way.turn',
  'header and turn': 'yard.way.both',
  none: 'yard.way.none',
} as const;

function wayText({ way, turn }: WayToFace, reader: Reader): string {
  return fill(reader.speech.words.phrases[WAYS[way]] ?? '', { front: lookText(turn, reader) });
}

function whole(value: number, { speech }: Reader): string {
  return quantity.formatNumber(value, { ...speech.figures, decimals: 0, group: true });
}

function length(metres: number, reader: Reader): string {
  return figureText(metres, 'length', { ...reader, medium: 'water' });
}

function mapText(yard: MappedYard, reader: Reader): string {
  const { phrases } = reader.speech.words;
  const map = signMap(yard);
  const head = fill(phrases['yard.map'] ?? '', {
    width: length(map.width, reader),
    height: length(map.height, reader),
  });
  const shown = [...Object.values(GROUND), ...Object.values(KINDS)].filter(({ sign }) => map.signs.has(sign));
  const legend = shown.map(({ sign, word }) => `${sign} ${phrases[word] ?? ''}`);
  const numbers = yard.best.length === 0 ? [] : [phrases['yard.sign.best'] ?? ''];
  return [wrap(head, WIDTH, ''), ...map.rows, wrap([...numbers, ...legend].join(' · '), WIDTH, '')].join(
    '\n',
  );
}
