/**
 * Fittings: Crane's coefficients, which the project computes with, against what other handbooks print for them.
 *
 * No handbook claims better than some tens of per cent for a fitting; the bands say how far two prints of one table,
 * or two tables of one fitting, stand apart.
 */
import { expectOk, quantity, water } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Misfit, Suite } from '../suite.ts';

const { FAHRENHEIT_STEP, FOOT, INCH } = quantity;
const { PLASTIC_EQUIVALENTS, PVC_SCHEDULE_40, fittingK, waterPipeSize } = catalog.water;

/* Feet of plastic pipe that lose what a fitting loses: Crane's K over the friction factor at 5 ft/s, 60 °F. */

const VISCOSITY = expectOk(water.waterAt((60 + 459.67) * FAHRENHEIT_STEP)).viscosity;
const FAIR_VELOCITY = 5 * FOOT;

function plasticLength(fitting: string, size: string): number {
  const insideDiameter = waterPipeSize(PVC_SCHEDULE_40, size)?.insideDiameter ?? Number.NaN;
  const reynolds = (FAIR_VELOCITY * insideDiameter) / VISCOSITY;
  const relativeRoughness = PVC_SCHEDULE_40.roughness / insideDiameter;
  const frictionFactor = water.frictionFactor.kernel({ reynolds, relativeRoughness });
  const k = fittingK(fitting, insideDiameter) ?? Number.NaN;
  return water.equivalentLength.kernel({ k, insideDiameter, frictionFactor }) / FOOT;
}

const LENGTHS: readonly Case[] = PLASTIC_EQUIVALENTS.filter((one) => one.fitting !== 'adapter').map(
  ({ fitting, size, length }) => ({
    id: `${fitting}, ${size} in`,
    published: length / FOOT,
    computed: () => plasticLength(fitting, size),
  }),
);

const LENGTH_MISFITS: readonly Misfit[] = [
  {
    cases: ['4', '6'].map((size) => `elbow-90, ${size} in`),
    because:
      'The table holds 30 diameters up to 1 in and 36 in 4 and 6 in, Crane 30 throughout; a second copy of it prints smaller elbows in the sizes between.',
  },
  {
    cases: ['2', '2-1/2', '3', '4', '6', '8'].map((size) => `tee-through, ${size} in`),
    because: 'From 2 in on the table takes 25 diameters for the run of a tee, under 2 in 20 as Crane does.',
  },
  {
    cases: ['1/2', '3/4', '2-1/2', '8'].map((size) => `tee-branch, ${size} in`),
    because: 'The table holds 60 to 77 diameters for the branch of a tee, without order of size; Crane 60.',
  },
  {
    cases: ['1/2', '3/4', '2-1/2', '3'].map((size) => `gate-valve, ${size} in`),
    because:
      'The table grows from 6 diameters in 1/2 in to 12 in 3 in, Crane takes 8; entries are printed to a tenth of a foot.',
  },
];

/* K of a fitting in 2 in pipe, by handbook. */

const BORE = 2.067 * INCH;
const [PERRY, TEXTBOOK] = catalog.water.MINOR_LOSS_TABLES;

function kCases(table: catalog.water.MinorLossTable | undefined): Case[] {
  return Object.entries(table?.k ?? {}).flatMap(([id, published]) => {
    const k = fittingK(id, BORE);
    return k === undefined ? [] : [{ id, published, computed: () => k }];
  });
}

const BETWEEN_HANDBOOKS = {
  quantity: 'loss coefficient K in 2 in pipe',
  band: { relative: 0.4 },
  bandBecause:
    'The handbooks themselves stand this far apart: 0.75, 0.9 and 1.5 for one standard elbow, 5 and 2 for one angle valve.',
} as const;

export const FITTINGS: readonly Suite[] = [
  {
    id: 'water/plastic-equivalent-lengths',
    area: 'water',
    kind: 'estimate',
    document: 'PVC equivalent length friction loss in fittings (table in public circulation)',
    at: 'elbows, tees, gate valves',
    quantity: 'equivalent length, ft',
    band: { relative: 0.16, absolute: 0.05 },
    bandBecause:
      'The table names neither law nor flow, and two public copies of it stand up to 16 % apart; printed to a tenth of a foot.',
    cases: LENGTHS,
    misfits: LENGTH_MISFITS,
  },
  {
    id: 'water/k-perry',
    area: 'water',
    kind: 'estimate',
    document: "Perry's Chemical Engineers' Handbook",
    at: 'Table 6-4, fittings that Crane lists too',
    ...BETWEEN_HANDBOOKS,
    cases: kCases(PERRY),
  },
  {
    id: 'water/k-textbooks',
    area: 'water',
    kind: 'estimate',
    document: 'LMNO Engineering, table of minor loss coefficients',
    at: 'threaded fittings that Crane lists too',
    ...BETWEEN_HANDBOOKS,
    cases: kCases(TEXTBOOK),
    misfits: [
      {
        cases: ['elbow-90', 'elbow-90-long', 'tee-through', 'tee-branch'],
        because:
          'The textbooks give one K for threaded fittings of every size, measured in small sizes; Crane’s falls with size and is 43 to 62 % under it in 2 in pipe.',
      },
    ],
  },
];
