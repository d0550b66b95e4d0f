/** Crane's friction factor of clean steel in complete turbulence, by nominal size. */
import { evaluate, quantity, water } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { INCH } = quantity;

/** Size → printed fT; a size that the table gives within a span has the span's figure. */
const PRINTED: Readonly<Record<string, number>> = {
  '1/2': 0.027,
  '3/4': 0.025,
  '1': 0.023,
  '1-1/4': 0.022,
  '1-1/2': 0.021,
  '2': 0.019,
  '2-1/2': 0.018,
  '3': 0.018,
  '4': 0.017,
  '5': 0.016,
  '6': 0.015,
  '8': 0.014,
  '10': 0.014,
  '12': 0.013,
  '16': 0.013,
  '18': 0.012,
  '24': 0.012,
};

/** Schedule 40 bores over 12 in, from memory of ASME B36.10M, in. */
const LARGE: Readonly<Record<string, number>> = { '16': 15, '18': 16.876, '24': 22.624 };

function bore(size: string): number {
  const pipe = catalog.gas.pipeSize(catalog.gas.STEEL_SCHEDULE_40, size);
  return pipe?.insideDiameter ?? (LARGE[size] ?? Number.NaN) * INCH;
}

const CASES: readonly Case[] = Object.entries(PRINTED).map(([size, published]) => ({
  id: `${size} in`,
  published,
  computed: () => evaluate(water.completeTurbulence, { insideDiameter: bore(size) }),
}));

export const CRANE_FT: Suite = {
  id: 'water/crane-ft',
  area: 'water',
  kind: 'published',
  document: 'Crane TP-410 (1986)',
  at: 'page A-26',
  quantity: 'friction factor',
  band: { absolute: 5.5e-4 },
  bandBecause: 'Printed to a thousandth, some sizes as a span.',
  cases: CASES,
  misfits: [
    {
      cases: ['1/2', '3/4', '1-1/4', '1-1/2', '3', '4', '10', '16'].map((size) => `${size} in`),
      because:
        'The table of 1986 was read off a chart and rounded up; these sizes stand up to 4.7 % over the equation that later printings give in its place, which is followed.',
    },
  ],
};
