/** The two figures of the code that it prints in SI besides. */
import { air, evaluate, expectOk } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

export const RULES_IN_SI: Suite = {
  id: 'air/nfpa-54-si',
  area: 'air',
  kind: 'published',
  document: 'NFPA 54-2012',
  at: '9.3.2.1 and 9.3.6, figures printed in SI, in the 2013 California Plumbing Code',
  quantity: 'as each case says',
  band: { relative: 0.006 },
  bandBecause: 'two or three digits',
  cases: [
    {
      id: 'standard method, m3/kW',
      published: 4.83,
      computed: () => expectOk(evaluate(air.standardRoomVolume, { heatInput: 1000 })),
    },
    {
      id: 'mechanical supply, m3/min for each kW',
      published: 0.034,
      computed: () => 60 * expectOk(evaluate(air.mechanicalSupply, { heatInput: 1000, exhaust: 0 })),
    },
  ],
};
