/**
 * Height of the water over the edge of a spillway.
 *
 *     Q = 1.84·b·h^1.5
 *
 * A spa that spills into a pool stands this much over its edge: 2 cm at 60 gpm over 2 ft, which the head of a pump
 * does not notice, but the look of the sheet does.
 *
 * How sources disagree: 1.7 for a broad edge to 1.84 for a sharp one; contraction at the sides takes up to a tenth.
 *
 * Source: Francis formula for a sharp-edged weir, no side contraction (from memory).
 * Range: flow from 0, width from 1 cm. Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 3.79 L/s (60 gpm) over 0.61 m → 22.5 mm.
 */
import type { Formula } from '../../trace/index.ts';

export interface SpilledFlow {
  /** Q, m3/s. */
  readonly flow: number;
  /** b, m. */
  readonly width: number;
}

/** h, m. */
export const spillHead: Formula<SpilledFlow> = {
  id: 'water.spill-head',
  equation: 'h = (Q/(1.84·b))^(2/3)',
  inputs: {
    flow: { symbol: 'Q', kind: 'volume-flow', min: 0, max: 100 },
    width: { symbol: 'b', kind: 'length', min: 0.01, max: 1000 },
  },
  result: { symbol: 'h', kind: 'head' },
  source: { document: 'Francis weir formula', known: 'from memory' },
  kernel: (x) => (x.flow / (1.84 * x.width)) ** (2 / 3),
};
