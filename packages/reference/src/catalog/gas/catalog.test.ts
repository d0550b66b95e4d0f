import { describe, expect, it } from 'vitest';
import {
  CSST_LOW_PRESSURE,
  CSST_TWO_PSI,
  corrugatedTableAt,
  FITTINGS,
  fitting,
  PIPES,
  pipeSize,
} from './index.ts';

describe.each([...PIPES])('$id', (pipe) => {
  it('has distinct sizes that rise in bore', () => {
    const bores = pipe.sizes.map((size) => size.insideDiameter);
    expect(bores).toEqual([...bores].sort((a, b) => a - b));
    expect(new Set(pipe.sizes.map((size) => size.id)).size).toBe(bores.length);
  });

  it('has walls where an outside is named, and a smooth enough inside', () => {
    for (const { insideDiameter, outsideDiameter = Number.POSITIVE_INFINITY } of pipe.sizes) {
      expect(outsideDiameter).toBeGreaterThan(insideDiameter);
      expect(pipe.roughness / insideDiameter).toBeLessThan(0.01);
    }
  });
});

describe.each([CSST_LOW_PRESSURE, CSST_TWO_PSI])('$id', (table) => {
  it('carries less over a longer run and more in a bigger tube', () => {
    table.sizes.forEach(({ ehd, flows }, size) => {
      expect(flows.length).toBe(table.lengths.length);
      flows.forEach((flow, row) => {
        if (row > 0) expect(flow).toBeLessThan(flows[row - 1] ?? 0);
        if (size > 0) expect(flow).toBeGreaterThan(table.sizes[size - 1]?.flows[row] ?? Number.NaN);
      });
      expect(ehd).toBeGreaterThan(table.sizes[size - 1]?.ehd ?? 0);
    });
  });
});

describe('the catalogue', () => {
  it('chooses the table by the pressure that chooses the equation', () => {
    expect(corrugatedTableAt(2000).id).toBe(CSST_LOW_PRESSURE.id);
    expect(corrugatedTableAt(13_789).id).toBe(CSST_TWO_PSI.id);
  });

  it('finds sizes and fittings by their names, and no others', () => {
    expect(PIPES.map((pipe) => pipeSize(pipe, '3/4')?.id)).toEqual(['3/4', '3/4', '3/4']);
    expect(PIPES.map((pipe) => pipeSize(pipe, '7/16'))).toEqual([undefined, undefined, undefined]);
    expect(FITTINGS.map((one) => fitting(one.id))).toEqual(FITTINGS);
  });
});
