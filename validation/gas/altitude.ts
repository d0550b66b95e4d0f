/** Input at altitude by the codes' defaults. */
import { expectOk, gas, quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { FOOT } = quantity;

/** Per cent of the sea-level input that is left at a height (ft). */
function left(feet: number, rule: gas.DerateRule): number {
  const input: gas.SeaLevelInput = { basis: 'sea-level', heatInput: 100_000 };
  return expectOk(gas.inputAtAltitude(input, { altitude: feet * FOOT, rule })).heatInput / 1000;
}

const cases = (rule: gas.DerateRule, printed: Readonly<Record<number, number>>): Case[] =>
  Object.entries(printed).map(([feet, published]) => ({
    id: `${feet} ft`,
    published,
    computed: () => left(Number(feet), rule),
  }));

export const ALTITUDE_SUITES: readonly Suite[] = [
  {
    id: 'altitude/nfpa-54-derate',
    area: 'altitude',
    kind: 'published',
    document: 'NFPA 54',
    at: '11.1.2 and Table E.1.1(d) (2015): unchanged to 2000 ft, above it 4 % each 1000 ft counted from sea level',
    quantity: 'input left, per cent',
    band: { absolute: 1e-9 },
    bandBecause: 'A rule of exact percentages.',
    cases: cases(gas.US_DERATE, { 1000: 100, 2000: 100, 5000: 80 }),
  },
  {
    id: 'altitude/b149-derate',
    area: 'altitude',
    kind: 'practice',
    document: 'CSA B149.1',
    at: 'from memory: 10 % from 2000 to 4500 ft',
    quantity: 'input left, per cent',
    band: { absolute: 1e-9 },
    bandBecause: 'A rule of exact percentages.',
    cases: cases(gas.CANADA_DERATE, { 1500: 100, 3000: 90, 4500: 90 }),
  },
];
