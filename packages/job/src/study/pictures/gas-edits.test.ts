import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Edit,
  EMPTY_HISTORY,
  Folding,
  type Json,
  recorded,
  toSurvey,
  undo,
  writeGroup,
} from '../../log/index.ts';
import { jobViewOf } from '../facts/job-view.ts';
import { type GasChange, GasDrawing } from './gas-edits.ts';
import { gasPictureOf } from './gas-picture.ts';
import type { GasNode, GasPicture } from './gas-shown.ts';

/** A job in memory, drawn on. */
class Sketch {
  readonly folding = new Folding('job');
  /** Groups written. */
  groups = 0;
  #made = 0;
  #clock = 1_700_000_000_000;
  #history = EMPTY_HISTORY;

  constructor(edits: readonly Edit[]) {
    this.edit(edits);
  }

  get view() {
    return jobViewOf(this.folding.document());
  }

  get picture(): GasPicture {
    return gasPictureOf(this.view, { findings: [] });
  }

  get survey(): Json {
    return toSurvey(this.folding.document());
  }

  get #writer() {
    this.#clock += 1;
    return { doc: 'job', replica: 'd1', author: 'me', now: this.#clock };
  }

  draw(take: (drawing: GasDrawing) => GasChange): GasChange {
    const newId = (): string => {
      this.#made += 1;
      return `x${this.#made}`;
    };
    const change = take(new GasDrawing(this.view, { newId, reading: (made) => ({ ...made }) as Json }));
    this.edit(change.edits);
    return change;
  }

  edit(edits: readonly Edit[]): void {
    const written = writeGroup(this.folding.document(), edits, this.#writer);
    if (!written.ok) throw new Error(JSON.stringify(written.issues));
    this.folding.take(written.operations);
    this.#history = recorded(this.#history, written.operations);
    this.groups += Number(written.operations.length > 0);
  }

  undo(): void {
    const result = undo(this.folding, this.#history, this.#writer);
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    this.#history = result.history;
    this.folding.take(result.operations);
  }
}

const add = (collection: string, element: string): Edit => ({ type: 'add', collection, element });
const set = (collection: string, element: string, field: string, value: Json): Edit => ({
  type: 'set',
  collection,
  element,
  field,
  value,
});

/** As a new job begins: a heater and one section, connected to nothing. */
const BLANK = [
  add('heaters', 'h1'),
  set('heaters', 'h1', 'planned', { value: 'yes', how: 'told' }),
  add('gasSegments', 's1'),
];

/** The tree in words: sections and regulators with what hangs at their ends. */
function said(node: GasNode): string {
  const hung = node.hung.map((one) => one.id).join('+');
  const branches = node.branches.map(({ link, end }) => `${link.id}>${said(end)}`);
  const parts = [hung, ...branches].filter(Boolean);
  return parts.length > 1 ? `(${parts.join(' ')})` : parts.join('');
}

const drawn = (sketch: Sketch): string => said(sketch.picture.root);

function started(): Sketch {
  const sketch = new Sketch(BLANK);
  sketch.draw((drawing) => drawing.begin());
  return sketch;
}

function nodesOf(node: GasNode): GasNode[] {
  return [node, ...node.branches.flatMap(({ end }) => nodesOf(end))];
}

describe('drawing the gas piping', () => {
  it('begins at the meter, with the section a new job has and the heater at its end', () => {
    expect(drawn(started())).toBe('s1>h1');
    expect(drawn(new Sketch([]))).toBe('');
    const bare = new Sketch([]);
    bare.draw((drawing) => drawing.begin());
    expect(drawn(bare)).toBe('x1>');
  });

  it('hangs an appliance on a branch of its own, and on a free end without one', () => {
    const sketch = started();
    const tee = sketch.draw((drawing) => drawing.split('s1')).opens?.id ?? '';
    sketch.draw((drawing) => drawing.appliance(tee));
    expect(drawn(sketch)).toMatch(/^s1>\(x\d+>x\d+ x\d+>h1\)$/);
    const pipe = sketch.draw((drawing) => drawing.pipe(tee)).opens?.id;
    const end = nodesOf(sketch.picture.root)
      .flatMap((node) => node.branches)
      .find(({ link }) => link.id === pipe)?.end;
    const { edits } = sketch.draw((drawing) => drawing.appliance(end?.id ?? ''));
    expect(edits.map((edit) => edit.type)).toEqual(['add', 'set']);
  });

  it('parts a section in the middle: same pipe, half the length each, as a first guess', () => {
    const sketch = started();
    sketch.edit([
      set('gasSegments', 's1', 'size', { value: '1', how: 'measured' }),
      set('gasSegments', 's1', 'length', { value: 40, unit: 'ft', how: 'measured' }),
    ]);
    sketch.draw((drawing) => drawing.split('s1'));
    const [first, second] = sketch.view.all('gasSegments');
    for (const half of [first, second]) {
      expect(half?.reading('length')).toMatchObject({ value: 20, unit: 'ft', how: 'assumed' });
      expect(half?.reading('size')).toMatchObject({ value: '1', how: 'measured' });
    }
    expect(drawn(sketch)).toBe(`s1>${second?.id}>h1`);
  });

  it.each(['ahead', 'behind'] as const)('puts a regulator %s of a section', (where) => {
    const sketch = started();
    const id = sketch.draw((drawing) => drawing.regulator('s1', where)).opens?.id;
    expect(drawn(sketch)).toBe(where === 'ahead' ? `${id}>s1>h1` : `s1>${id}>h1`);
    sketch.draw((drawing) => drawing.removeLink('regulator', id ?? ''));
    expect(drawn(sketch)).toBe('s1>h1');
  });

  it('joins the ends of a section that is taken out, or takes all behind it too', () => {
    const sketch = started();
    const tee = sketch.draw((drawing) => drawing.split('s1')).opens?.id ?? '';
    const appliance = sketch.draw((drawing) => drawing.appliance(tee)).opens?.id;
    const before = sketch.survey;
    sketch.draw((drawing) => drawing.removeLink('section', 's1'));
    expect(drawn(sketch)).toMatch(new RegExp(`^\\(x\\d+>${appliance} x\\d+>h1\\)$`));
    sketch.undo();
    expect(sketch.survey).toEqual(before);
    sketch.draw((drawing) => drawing.removeBeyond('section', 's1'));
    expect(drawn(sketch)).toBe('');
    expect(sketch.view.all('gasAppliances')).toEqual([]);
    expect(sketch.picture.loose.hung.map((one) => one.id)).toEqual(['h1']);
  });

  it('moves what hangs there to another junction', () => {
    const sketch = started();
    sketch.draw((drawing) => drawing.hang({ kind: 'heater', id: 'h1' }, 'supply'));
    expect(drawn(sketch)).toBe('(h1 s1>)');
  });

  it('gives what hangs at a junction a pipe of its own', () => {
    const sketch = started();
    const pipe = sketch.draw((drawing) =>
      drawing.ownPipe({ kind: 'heater', id: 'h1' }, sketch.picture.heater?.node ?? ''),
    );
    expect(drawn(sketch)).toBe(`s1>${pipe.opens?.id}>h1`);
    sketch.undo();
    expect(drawn(sketch)).toBe('s1>h1');
  });

  it('moves a branch with all behind it, and never behind itself', () => {
    const sketch = started();
    const tee = sketch.draw((drawing) => drawing.split('s1')).opens?.id ?? '';
    const appliance = sketch.draw((drawing) => drawing.appliance(tee)).opens?.id;
    const regulator = sketch.draw((drawing) => drawing.regulator('s1', 'behind')).opens?.id ?? '';
    const second = sketch.view.all('gasSegments')[1]?.id ?? '';
    expect(drawn(sketch)).toMatch(new RegExp(`^s1>${regulator}>\\(x\\d+>${appliance} ${second}>h1\\)$`));
    const before = drawn(sketch);
    sketch.draw((drawing) => drawing.move('section', 's1', tee));
    expect(drawn(sketch)).toBe(before);
    sketch.draw((drawing) => drawing.move('section', second, 'supply'));
    expect(drawn(sketch)).toMatch(new RegExp(`^\\(s1>${regulator}>x\\d+>${appliance} ${second}>h1\\)$`));
    sketch.draw((drawing) => drawing.move('regulator', regulator, 'supply'));
    expect(drawn(sketch)).toMatch(new RegExp(`^\\(s1> ${regulator}>x\\d+>${appliance} ${second}>h1\\)$`));
    sketch.undo();
    sketch.undo();
    expect(drawn(sketch)).toBe(before);
  });

  it('leaves a tree a tree whatever is tapped, and undo leads back', () => {
    type Tap = (drawing: GasDrawing, at: { node: string; section: string }) => GasChange;
    const taps: Tap[] = [
      (drawing, { node }) => drawing.pipe(node),
      (drawing, { node }) => drawing.appliance(node),
      (drawing, { section }) => drawing.split(section),
      (drawing, { section }) => drawing.regulator(section, 'ahead'),
      (drawing, { section }) => drawing.regulator(section, 'behind'),
      (drawing, { section }) => drawing.removeLink('section', section),
      (drawing, { section }) => drawing.removeBeyond('section', section),
      (drawing, { node, section }) => drawing.move('section', section, node),
      (drawing, { node }) => drawing.hang({ kind: 'heater', id: 'h1' }, node),
      (drawing, { node }) => drawing.ownPipe({ kind: 'heater', id: 'h1' }, node),
    ];
    const pick = <T>(all: readonly T[], at: number): T | undefined => all[at % Math.max(all.length, 1)];
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(taps.length - 1), fc.nat(40)), { maxLength: 12 }), (script) => {
        const sketch = started();
        const [before, groups] = [sketch.survey, sketch.groups];
        for (const [tap, at] of script) {
          const nodes = nodesOf(sketch.picture.root);
          const sections = nodes.flatMap((one) => one.branches).filter(({ link }) => link.type === 'section');
          const on = {
            node: pick(nodes, at)?.id ?? 'supply',
            section: pick(sections, at)?.link.id ?? '',
          };
          sketch.draw((drawing) => {
            const bySection = tap >= 2 && tap <= 7;
            return (bySection && on.section === '' ? undefined : taps[tap]?.(drawing, on)) ?? { edits: [] };
          });
          const { loose, closing } = sketch.picture;
          expect({ closing, links: loose.links }).toEqual({ closing: [], links: [] });
        }
        for (let left = sketch.groups - groups; left > 0; left -= 1) sketch.undo();
        expect(sketch.survey).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });
});
