import { evaluate, ok, water } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** Time in which one volume of the basin passes through the filter. */
export const turnover = defineSum({
  name: 'turnover',
  inputs: { volume: number('volume', 'gal'), flow: number('volume-flow', 'gpm') },
  outputs: { hours: { kind: 'time', unit: 'h' } },
  source: water.turnover.source,
  example: {
    given: { volume: '120000 gal', flow: '333.333 gpm' },
    gives: { hours: '6 h' },
    within: 1e-5,
    source: {
      document: 'Wisconsin Administrative Code',
      at: 'SPS 390.14, Table 390.14-1: 6 h; gpm = gallons/(60·h)',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    const time = evaluate(water.turnover, { volume: x.volume, flow: x.flow });
    return time.ok ? ok({ hours: time.value }) : time;
  },
});
