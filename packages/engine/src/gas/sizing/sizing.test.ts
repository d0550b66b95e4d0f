import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, HOUR, INCH, INCH_OF_WATER, PSI, STANDARD_CUBIC_FOOT } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import { NATURAL_GAS } from '../fuel.ts';
import { capacityTable, type TableSize } from './capacity-table.ts';
import { sectionDrops } from './drops.ts';
import { type SizingMethod, sizePiping } from './size-piping.ts';
import { farthestRuns, pipingTree, runLengths, type Section } from './tree.ts';

const SCFH = STANDARD_CUBIC_FOOT / HOUR;
const ROWS = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 125, 150, 175, 200].map((feet) => feet * FOOT);
const BORES = { '3/8': 0.493, '1/2': 0.622, '3/4': 0.824, '1': 1.049, '1-1/4': 1.38 };
const SIZES: TableSize[] = Object.entries(BORES)
  .sort(([, a], [, b]) => a - b)
  .map(([id, inches]) => ({ id, carrier: { type: 'bore', insideDiameter: inches * INCH } }));

const low = { inletPressure: 7 * INCH_OF_WATER, pressureDrop: 0.5 * INCH_OF_WATER, fuel: NATURAL_GAS };
const table = expectOk(capacityTable(SIZES, ROWS, low));

const section = (id: string, feet: number, cfh: number, upstream?: string): Section => ({
  id,
  length: feet * FOOT,
  load: cfh * SCFH,
  ...(upstream === undefined ? {} : { upstream }),
});

/** NFPA 54 example C.7.1: 60 ft to outlet A; only the longest length and the loads are printed. */
const C71 = [
  section('A', 15, 35, 'one'),
  section('one', 20, 0, 'three'),
  section('B', 10, 75, 'one'),
  section('three', 25, 0),
  section('two', 10, 135, 'three'),
];

function sizes(sections: readonly Section[], method: SizingMethod): Record<string, string> {
  const sized = expectOk(sizePiping(expectOk(pipingTree(sections)), table, method));
  return Object.fromEntries(sized.map((one) => [one.id, one.size]));
}

describe('longest-length method', () => {
  it('gives every size of NFPA 54 example C.7.1', () => {
    expect(sizes(C71, 'longest-length')).toEqual({ A: '3/8', B: '3/4', one: '3/4', two: '3/4', three: '1' });
  });

  it('counts fittings in the size found', () => {
    const tree = expectOk(pipingTree([{ ...section('main', 58, 250), fittings: 30 * 4 }]));
    const [main] = expectOk(sizePiping(tree, table, 'longest-length'));
    // Without fittings 1 in carries 259 over 60 ft; four elbows make it 68 ft, the 70 ft row, and 1-1/4 in.
    expect(main).toMatchObject({ size: '1-1/4' });
    expect(main?.fittingsLength).toBeCloseTo(120 * 1.38 * INCH, 9);
  });

  it('says which section the table does not reach', () => {
    const far = sizePiping(expectOk(pipingTree([section('far', 500, 10)])), table, 'longest-length');
    expect(far.ok ? [] : far.issues.map((issue) => [issue.where, issue.reason])).toEqual([
      ['far.length', 'beyond-table'],
    ]);
    const big = sizePiping(expectOk(pipingTree([section('big', 50, 9000)])), table, 'longest-length');
    expect(big.ok ? [] : big.issues.map((issue) => [issue.where, issue.reason])).toEqual([
      ['big.load', 'beyond-table'],
    ]);
  });
});

describe('branch-length method', () => {
  it('reads a branch on its own run, and the longest run on the longest length', () => {
    const sections = [
      section('main', 30, 0),
      section('far', 120, 60, 'main'),
      section('near', 5, 140, 'main'),
    ];
    const branch = sizes(sections, 'branch-length');
    const longest = sizes(sections, 'longest-length');
    expect(branch).toMatchObject({ main: longest['main'], far: longest['far'] });
    // By the equation 3/4 in carries 171 over the 40 ft row and 83 over the 150 ft row.
    expect([branch['near'], longest['near']]).toEqual(['3/4', '1']);
  });
});

describe('pipingTree', () => {
  it('adds up loads and runs from any order of sections', () => {
    const tree = expectOk(pipingTree(C71));
    const runs = runLengths(
      tree,
      tree.sections.map((one) => one.length),
    );
    const at = (id: string): number => tree.sections.findIndex((one) => one.id === id);
    expect((tree.loads[at('three')] ?? 0) / SCFH).toBeCloseTo(245, 9);
    expect((runs[at('A')] ?? 0) / FOOT).toBeCloseTo(60, 9);
    expect((farthestRuns(tree, runs)[at('one')] ?? 0) / FOOT).toBeCloseTo(60, 9);
  });

  it.each([
    ['id-twice', [section('a', 1, 1), section('a', 1, 1)]],
    ['unknown-section', [section('a', 1, 1, 'z')]],
    ['circle', [section('a', 1, 1, 'b'), section('b', 1, 1, 'a')]],
    ['none', []],
  ])('refuses: %s', (reason, sections) => {
    const tree = pipingTree(sections);
    expect(tree.ok ? [] : tree.issues.map((issue) => issue.reason)).toContain(reason);
  });
});

describe('sectionDrops', () => {
  const pick = fc.integer({ min: 1, max: 3 });
  it('keeps the longest run of a sized system within the drop it was sized for', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(pick, fc.integer({ min: 5, max: 35 })), { minLength: 5, maxLength: 5 }),
        (x) => {
          const sections = x.map(([load, feet], i) =>
            section(`s${i}`, feet, 20 * load, i === 0 ? undefined : `s${Math.floor((i - 1) / 2)}`),
          );
          const tree = expectOk(pipingTree(sections));
          const sized = expectOk(sizePiping(tree, table, 'longest-length'));
          const runs = sized.map((one, i) => ({
            carrier: SIZES[one.sizeIndex]?.carrier ?? { type: 'bore' as const, insideDiameter: Number.NaN },
            length: tree.sections[i]?.length ?? 0,
          }));
          const drops = expectOk(
            sectionDrops(tree, { supplyPressure: 7 * INCH_OF_WATER, fuel: NATURAL_GAS, runs }),
          );
          const lowest = Math.min(...drops.map((drop) => drop.outletPressure));
          expect(lowest).toBeGreaterThan(6.5 * INCH_OF_WATER - 1e-6);
        },
      ),
    );
  });

  it('names the section that starves', () => {
    const tree = expectOk(pipingTree([section('main', 10, 20), section('thin', 200, 400, 'main')]));
    const [thin, thick] = [SIZES[0]?.carrier, SIZES[4]?.carrier];
    if (thin === undefined || thick === undefined) throw new Error('sizes');
    const runs = [
      { carrier: thick, length: 3 },
      { carrier: thin, length: 60 },
    ];
    const drops = sectionDrops(tree, { supplyPressure: 0.3 * PSI, fuel: NATURAL_GAS, runs });
    expect(drops.ok ? [] : drops.issues.map((issue) => issue.where)).toEqual(['thin.flow']);
  });
});
