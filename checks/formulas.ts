/** Every formula that can be reached through a door, such as the engine's. */
import type { Formula } from '@firstfire/engine';

export type AnyFormula = Pick<Formula<Record<string, number>>, 'id' | 'equation' | 'inputs'>;

const DEEPEST = 4;

export function formulasIn(value: unknown, depth = 0): AnyFormula[] {
  if (typeof value !== 'object' || value === null || depth > DEEPEST) return [];
  if (isFormula(value)) return [value];
  return Object.values(value).flatMap((part) => formulasIn(part, depth + 1));
}

function isFormula(value: object): value is AnyFormula {
  return 'id' in value && 'inputs' in value && 'kernel' in value;
}
