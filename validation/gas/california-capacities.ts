/**
 * 2013 California Plumbing Code, chapter 12: capacity tables of NFPA 54 whole, where the copy of the fuel gas code
 * broke off, against the equations the same chapter prints; and the factors of those equations.
 */
import { gas } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Misfit, Suite } from '../suite.ts';
import { type CapacityPrint, equationCases } from './capacity-print.ts';
import { CALIFORNIA_COPPER, CALIFORNIA_STEEL } from './data/california-2013.ts';

const DOCUMENT = '2013 California Plumbing Code (NFPA 54-2012)';

const MISFITS: Readonly<Record<string, readonly Misfit[]>> = {
  '1216.2(28)': [
    {
      cases: ['700 ft 1/4'],
      because:
        'Printed 51 between 54 and 50, where the trend of the column is 51.4: the last step of a rounding.',
    },
  ],
};

function suite(print: CapacityPrint, pipe: catalog.gas.Pipe, cellOf: string): Suite {
  return {
    id: `gas/california-2013-${print.table.replaceAll(/\D+/g, '-').replace(/-$/, '')}`,
    area: 'gas',
    kind: 'published',
    document: DOCUMENT,
    at: `Table ${print.table}, NFPA 54 Table ${cellOf}: ${print.what}`,
    quantity: 'capacity, kBtu/h',
    band: { relative: 0.0167, absolute: 0.9 },
    bandBecause:
      'The tables were made with exponents rounded to three digits and at 2488 Btu/ft3, where the examples say 2500; cells are rounded to three digits, and to whole thousands below 100.',
    cases: equationCases(print, pipe),
    misfits: MISFITS[print.table] ?? [],
  };
}

const PRINTED_FACTORS = {
  natural: { cr: 0.6094, y: 0.9992 },
  propane: { cr: 1.2462, y: 0.991 },
} as const;

const carriedFactors: Case[] = (['natural', 'propane'] as const).flatMap((name) =>
  (['cr', 'y'] as const).map((factor) => ({
    id: `${name} ${factor}`,
    published: PRINTED_FACTORS[name][factor],
    computed: () => gas.SIZING_FACTORS[name][factor],
  })),
);

const workedFactors: Case[] = (['natural', 'propane'] as const).map((name) => ({
  id: `${name} cr from gravity and viscosity`,
  published: PRINTED_FACTORS[name].cr,
  computed: () => gas.sizingFactor.kernel({ ...gas.CODE_GAS[name], temperature: gas.SIZING_TEMPERATURE }),
}));

const FACTORS = { area: 'gas', kind: 'published', document: DOCUMENT, quantity: 'factor' } as const;

export const CALIFORNIA_CAPACITY_SUITES: readonly Suite[] = [
  suite(CALIFORNIA_STEEL, catalog.gas.STEEL_SCHEDULE_40, '6.3(c)'),
  suite(CALIFORNIA_COPPER, catalog.gas.COPPER_TUBE, '6.3(e)'),
  {
    ...FACTORS,
    id: 'gas/california-2013-factors',
    carried: true,
    at: 'Table 1216.3, NFPA 54 Table 6.4.2: Cr and Y',
    band: { absolute: 1e-9 },
    bandBecause: 'The same figures.',
    cases: carriedFactors,
  },
  {
    ...FACTORS,
    id: 'gas/california-2013-factor-worked',
    at: 'Table 1216.3, Cr worked out by the expression of IFGC A.4',
    band: { absolute: 0.00011 },
    bandBecause: 'Four printed decimals, from a coefficient of three digits.',
    cases: workedFactors,
  },
];
