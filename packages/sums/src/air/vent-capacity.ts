import { air, ok } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { choice, defineSum, number } from '../sum.ts';

const KINDS = [
  'type-b-natural',
  'type-b-fan',
  'single-wall-connector-natural',
  'single-wall-connector-fan',
  'single-wall-natural',
] as const satisfies readonly air.VentKind[];

/**
 * Greatest input a vent of one Category I burner carries away: by the code’s table, or, where somebody asks for it, by
 * the chimney relation, which reaches further and is not what an inspector takes.
 */
export const ventCapacity = defineSum({
  name: 'vent-capacity',
  inputs: {
    kind: choice(KINDS),
    diameter: number('diameter', 'in'),
    height: number('length', 'ft'),
    lateral: number('length', 'ft'),
    method: { ...choice(['table', 'chimney']), optional: true, fallback: 'table' },
  },
  outputs: { 'heat-input': { kind: 'heat-rate', unit: 'kBtu/h' } },
  source: {
    document: 'International Fuel Gas Code',
    at: 'Tables 504.2(1), 504.2(2) and 504.2(5)',
    known: 'from memory',
  },
  example: {
    given: { kind: 'type-b-natural', diameter: '4 in', height: '12 ft', lateral: '5 ft' },
    gives: { 'heat-input': '81 kBtu/h' },
    within: 1e-9,
    source: {
      document: 'International Fuel Gas Code',
      at: 'appendix B, example 3',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    const point = { diameter: x.diameter, height: x.height, offset: x.lateral };
    const found =
      x.method === 'chimney'
        ? air.chimneyCapacity(air.tableChimney(x.kind, point))
        : air.ventTableCapacity(catalog.air.ventTables(x.kind, x.diameter).most, point);
    return found.ok ? ok({ 'heat-input': found.value }) : found;
  },
});
