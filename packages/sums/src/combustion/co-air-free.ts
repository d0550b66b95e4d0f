import { combustion, evaluate, fail, ok } from '@firstfire/engine';
import { defineSum, number } from '../sum.ts';

/** Carbon monoxide as it would read had no air thinned the sample. */
export const coAirFree = defineSum({
  name: 'co-air-free',
  inputs: { co: number('volume-fraction', 'ppm'), o2: number('ratio', '%') },
  outputs: { co: { kind: 'volume-fraction', unit: 'ppm' } },
  source: combustion.CO_AIR_FREE_SOURCE,
  example: {
    given: { co: '100 ppm', o2: '10.45 %' },
    gives: { co: '200 ppm' },
    within: 1e-9,
    source: { document: 'half of the sample is air', at: 'balance of dilution', known: 'physics' },
  },
  run: (x) => {
    const found = evaluate(combustion.coAirFree, { carbonMonoxide: x.co, oxygen: x.o2 });
    if (found.ok) return ok({ co: found.value });
    return fail(...found.issues.map((one) => ({ ...one, where: one.where === 'oxygen' ? 'o2' : 'co' })));
  },
});
