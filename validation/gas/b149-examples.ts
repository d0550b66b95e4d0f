/**
 * Canada: sizing examples of a gas technician training text that restates CSA B149.1. The low-pressure tables there
 * hold usual fittings by a factor of 1.2 on the length; those of 5 psi and more do not, and their fittings are proved.
 */
import { gas, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';
import {
  COPPER_TUBE,
  columns,
  MBH,
  type SizingExample,
  STEEL_SCHEDULE_40,
  section,
  sizeCases,
  solve,
} from './sizing-case.ts';

const { FOOT, INCH, INCH_OF_WATER, PSI } = quantity;
const DOCUMENT = 'Gas technician training text restating CSA B149.1';
const natural = (mbh: number): number => gas.flowOfHeat(gas.NATURAL_GAS, mbh * MBH);
const propane = (mbh: number): number => gas.flowOfHeat(gas.PROPANE, mbh * MBH);

const LOW: gas.TableBasis = {
  inletPressure: 6.9 * INCH_OF_WATER,
  pressureDrop: 0.5 * INCH_OF_WATER,
  fuel: gas.NATURAL_GAS,
  lengthFactor: 1.2,
};

const steel = (sections: SizingExample['sections'], basis: gas.TableBasis) => () =>
  solve({ sections, basis, sizes: columns(STEEL_SCHEDULE_40, '1/2') });

const READING = steel([section('run', 65, natural(300))], LOW);

const LOW_RUN = steel(
  [
    section('C', 20, 0),
    section('A', 14, natural(120), { upstream: 'C' }),
    section('B', 10, natural(65), { upstream: 'C' }),
  ],
  LOW,
);

const TWO_PSI_LOW = steel([section('low', 8, natural(160))], {
  ...LOW,
  inletPressure: 7 * INCH_OF_WATER,
  pressureDrop: INCH_OF_WATER,
});

const TWO_PSI_HIGH = steel([section('high', 44, natural(160))], {
  ...LOW,
  inletPressure: 2 * PSI,
  pressureDrop: PSI,
});

const ELBOW = catalog.gas.fitting('elbow-90').lengthOverDiameter;
const TEE = catalog.gas.fitting('tee-branch').lengthOverDiameter;

/** The text counts a 3/4 in valve as an elbow. Section C carries three elbows and the tee; its own length is ours. */
const FIVE_PSI = steel(
  [
    section('C', 100, 0, { fittings: 3 * ELBOW + TEE }),
    section('A', 45, natural(1000), { upstream: 'C', fittings: 3 * ELBOW }),
    section('B', 40, natural(750), { upstream: 'C', fittings: 2 * ELBOW }),
  ],
  { inletPressure: 5 * PSI, pressureDrop: 2.5 * PSI, fuel: gas.NATURAL_GAS },
);

const COPPER = columns(COPPER_TUBE, '1/4');

const PROPANE_LOW = () =>
  solve({
    sections: [
      section('C', 15, 0),
      section('A', 15, propane(250), { upstream: 'C' }),
      section('B', 10, propane(35), { upstream: 'C' }),
    ],
    sizes: COPPER,
    basis: {
      inletPressure: 11 * INCH_OF_WATER,
      pressureDrop: INCH_OF_WATER,
      fuel: gas.PROPANE,
      lengthFactor: 1.2,
    },
  });

const PROPANE_HIGH = () =>
  solve({
    sections: [section('D', 50, propane(285))],
    sizes: COPPER,
    basis: { inletPressure: 10 * PSI, pressureDrop: 5 * PSI, fuel: gas.PROPANE },
  });

/** The text names copper by its outside diameter; the catalogue by its nominal size. */
function nominal(outside: number): string {
  return (
    COPPER_TUBE.sizes.find((size) => Math.abs((size.outsideDiameter ?? 0) / INCH - outside) < 1e-9)?.id ?? ''
  );
}

type Solved = ReturnType<typeof READING>;
type Field = (section: gas.SizedSection | undefined) => number;

function fieldCases(
  field: Field,
  printed: readonly (readonly [string, () => Solved, string, number])[],
): Case[] {
  return printed.map(([id, solved, name, published]) => ({
    id: `${id} ${name}`,
    published,
    computed: () => field(solved().get(name)),
  }));
}

const zone: Field = (one) => (one?.rowLength ?? Number.NaN) / FOOT;
const naturalCapacity: Field = (one) => ((one?.capacity ?? Number.NaN) * gas.NATURAL_GAS.heatingValue) / MBH;
const propaneCapacity: Field = (one) => ((one?.capacity ?? Number.NaN) * gas.PROPANE.heatingValue) / MBH;

function suite(more: Pick<Suite, 'id' | 'at' | 'quantity' | 'band' | 'bandBecause' | 'cases'>): Suite {
  return { area: 'gas', kind: 'published', document: DOCUMENT, ...more };
}

export const B149_SUITES: readonly Suite[] = [
  suite({
    id: 'gas/b149-sizes',
    at: 'Units 8 and 10, sizing examples',
    quantity: 'trade size, in',
    band: { absolute: 1e-9 },
    bandBecause: 'A trade size is right or wrong.',
    cases: [
      ...sizeCases('reading A.1', { run: '1-1/4' }, READING),
      ...sizeCases('low', { A: '3/4', B: '1/2', C: '1' }, LOW_RUN),
      ...sizeCases('2 psi', { low: '1/2' }, TWO_PSI_LOW),
      ...sizeCases('2 psi', { high: '1/2' }, TWO_PSI_HIGH),
      ...sizeCases('5 psi', { A: '3/4', B: '3/4', C: '1' }, FIVE_PSI),
      ...sizeCases('propane', { A: nominal(0.875), B: nominal(0.5), C: nominal(0.875) }, PROPANE_LOW),
      ...sizeCases('propane', { D: nominal(0.375) }, PROPANE_HIGH),
    ],
  }),
  suite({
    id: 'gas/b149-zones',
    at: 'Units 8 and 10, code zone (row) of the longest run',
    quantity: 'row, ft',
    band: { absolute: 1e-6 },
    bandBecause: 'A row is right or wrong.',
    cases: fieldCases(zone, [
      ['reading A.1', READING, 'run', 70],
      ['low', LOW_RUN, 'A', 40],
      ['2 psi', TWO_PSI_LOW, 'low', 10],
      ['2 psi', TWO_PSI_HIGH, 'high', 50],
      ['5 psi', FIVE_PSI, 'A', 175],
      ['propane', PROPANE_LOW, 'A', 30],
      ['propane', PROPANE_HIGH, 'D', 50],
    ]),
  }),
  suite({
    id: 'gas/b149-capacities',
    at: 'Units 8 and 10, capacities read from Tables A.1, A.5, B.6 and B.9',
    quantity: 'capacity, kBtu/h',
    band: { relative: 0.0085 },
    bandBecause:
      'Metric tables of three digits converted to kBtu/h, and exponents rounded as in the American tables.',
    cases: [
      ...fieldCases(naturalCapacity, [
        ['reading A.1', READING, 'run', 440],
        ['5 psi', FIVE_PSI, 'A', 1245],
        ['5 psi', FIVE_PSI, 'C', 2344],
      ]),
      ...fieldCases(propaneCapacity, [
        ['propane', PROPANE_LOW, 'A', 343],
        ['propane', PROPANE_LOW, 'B', 68],
        ['propane', PROPANE_HIGH, 'D', 496],
      ]),
    ],
  }),
  suite({
    id: 'gas/b149-fittings',
    at: 'Unit 10, equivalent lengths of the 5 psi example',
    quantity: 'length, ft',
    band: { absolute: 0.013 },
    bandBecause: 'The text adds six lengths, each rounded to 0.01 ft.',
    cases: [
      { id: '1 in elbow', published: 2.62, computed: () => fittingFeet(ELBOW, '1') },
      { id: '1 in tee', published: 5.24, computed: () => fittingFeet(TEE, '1') },
      { id: '3/4 in elbow', published: 2.06, computed: () => fittingFeet(ELBOW, '3/4') },
      { id: 'total of A', published: 19.28, computed: () => addedFeet('A') },
      { id: 'total of B', published: 17.22, computed: () => addedFeet('B') },
      { id: 'run of A', published: 164.28, computed: () => 145 + addedFeet('A') },
      { id: 'run of B', published: 157.22, computed: () => 140 + addedFeet('B') },
    ],
  }),
];

function fittingFeet(lengthOverDiameter: number, size: string): number {
  const insideDiameter = catalog.gas.pipeSize(STEEL_SCHEDULE_40, size)?.insideDiameter ?? Number.NaN;
  return gas.equivalentLength.kernel({ lengthOverDiameter, insideDiameter }) / FOOT;
}

/** Equivalent length on the way to an outlet, in the sizes found. */
function addedFeet(outlet: string): number {
  const solved = FIVE_PSI();
  const of = (name: string): number => solved.get(name)?.fittingsLength ?? Number.NaN;
  return (of('C') + of(outlet)) / FOOT;
}
