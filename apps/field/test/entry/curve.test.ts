/** Rows of a table as the points of a curve. */
import { fieldFact } from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { curveGiven, numberIn, rowsOf, rowsRead, unitsOfCurve } from '../../src/entry/curve.ts';
import { fitted } from '../../src/entry/photos.ts';
import { signsOf } from '../../src/entry/signs.ts';
import { sizesOf } from '../../src/entry/sizes.ts';

const AXES = { kinds: ['volume-flow', 'head'], units: ['gpm', 'ft of head'] } as const;

describe('a curve', () => {
  it('is read row by row, in the order of its flow', () => {
    const { points, unclear } = rowsRead(
      [
        { x: '60', y: '48' },
        { x: '0', y: '62,5' },
        { x: '', y: '' },
      ],
      ',',
    );
    expect(unclear).toEqual([]);
    const given = curveGiven(points, AXES);
    expect(given).toEqual({
      value: [
        [0, 62.5],
        [60, 48],
      ],
      unit: 'gpm, ft of head',
    });
    expect(fieldFact('pumps', 'curve', { how: 'nameplate', value: 0, ...given })).toMatchObject({
      state: 'curve',
    });
  });

  it('names the rows that are no pair of numbers, and throws nothing away', () => {
    expect(
      rowsRead(
        [
          { x: '60', y: '' },
          { x: 'a', y: '1' },
          { x: '1', y: '2' },
        ],
        '.',
      ),
    ).toEqual({
      points: [[1, 2]],
      unclear: [0, 1],
    });
    expect(numberIn('1-1/2', '.')).toBe(1.5);
    expect(numberIn('5 %', '.')).toBeUndefined();
  });

  it('comes back as it was given', () => {
    const before = {
      value: [
        [30, 1.2],
        [60, 4.1],
      ],
      unit: 'gpm, ft',
      how: 'nameplate',
    } as const;
    expect(rowsOf(before, undefined)).toEqual([
      { x: '30', y: '1.2' },
      { x: '60', y: '4.1' },
    ]);
    expect(unitsOfCurve(before, AXES.kinds, 'si')).toEqual(['gpm', 'ft']);
    expect(unitsOfCurve(undefined, AXES.kinds, 'si')).toEqual(['L/min', 'm of head']);
  });
});

describe('a nominal size', () => {
  it('is one of its material, and of any where that is not known', () => {
    expect(sizesOf('gasSegments', 'csst')[0]?.names[0]).toMatch(/^EHD \d+$/);
    expect(sizesOf('gasSegments', 'steel-schedule-40')[0]?.names).toContain('1-1/4');
    expect(sizesOf('gasSegments', undefined)).toHaveLength(4);
    expect(sizesOf('waterRuns', 'pvc-40')[0]?.names).toContain('2-1/2');
    expect(sizesOf('waterRuns', 'lead')).toHaveLength(5);
  });
});

describe('a photo', () => {
  it('is no longer than 1600 pixels, and never enlarged', () => {
    expect(fitted({ width: 4032, height: 3024 })).toEqual({ width: 1600, height: 1200 });
    expect(fitted({ width: 900, height: 1600 })).toEqual({ width: 900, height: 1600 });
    expect(fitted({ width: 9000, height: 1 })).toEqual({ width: 1600, height: 1 });
  });
});

describe('a sign', () => {
  it('has keys only where a value may be below zero', () => {
    expect(signsOf('length', { kind: 'length', min: 0.01 })).toBeUndefined();
    expect(signsOf('rise', { kind: 'length', min: -300 })).toEqual({ above: 'above', below: 'below' });
    expect(signsOf('winterTemperature', { kind: 'temperature', min: 213 })?.below).toBe('below-zero');
    expect(signsOf('setTemperature', { kind: 'temperature', min: 273.15 })).toBeUndefined();
  });
});
