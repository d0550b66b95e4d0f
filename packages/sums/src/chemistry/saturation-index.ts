import { chemistry, fail, ok } from '@firstfire/engine';
import { failTyped } from '../engine-names.ts';
import { choice, defineSum, number } from '../sum.ts';

/** Whether water drops scale or dissolves what it touches, by a named variant. */
export const saturationIndex = defineSum({
  name: 'saturation-index',
  inputs: {
    variant: choice(chemistry.INDEX_VARIANTS),
    ph: number('ph', '1'),
    temperature: number('temperature', 'degF'),
    calcium: number('mass-concentration', 'mg/L'),
    alkalinity: number('mass-concentration', 'mg/L'),
    tds: number('mass-concentration', 'mg/L', { optional: true }),
    'cyanuric-acid': number('mass-concentration', 'mg/L', { optional: true, fallback: 0 }),
  },
  outputs: { index: { kind: 'ph', unit: '1' } },
  source: chemistry.TABLE_INDEX_SOURCE,
  example: {
    given: { variant: 'table', ph: '7.6', temperature: '84 °F', calcium: '300 mg/L', alkalinity: '75 mg/L' },
    gives: { index: '0.2' },
    within: 1e-6,
    source: {
      document: 'Pool operator course, sample problems',
      at: 'saturation index, second problem',
      known: 'read in a public copy',
    },
  },
  run: (x) => {
    // The table alone has a constant for water whose solids nobody measured: that of up to 1000 mg/L.
    if (x.tds === undefined && x.variant !== 'table')
      return fail({ code: 'ill-formed', where: 'tds', reason: 'needed-by-method' });
    const index = chemistry.saturationIndex(x.variant, {
      ph: x.ph,
      temperature: x.temperature,
      calcium: x.calcium,
      totalAlkalinity: x.alkalinity,
      dissolvedSolids: x.tds ?? 0,
      cyanuricAcid: x['cyanuric-acid'] ?? 0,
    });
    if (index.ok) return ok({ index: index.value });
    return failTyped(index.issues.map((issue) => ({ ...issue, where: NAMES[issue.where] ?? issue.where })));
  },
});

/** Names of the engine that differ from those of the trade’s test kit. */
const NAMES: Readonly<Record<string, string>> = { totalAlkalinity: 'alkalinity', dissolvedSolids: 'tds' };
