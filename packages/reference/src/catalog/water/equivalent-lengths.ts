/**
 * Plastic fittings as feet of straight pipe of their own size, as the pool and irrigation trades circulate them.
 *
 * The table names neither the friction rule nor the flow it was made with. Two public copies differ by up to a foot
 * in the larger elbows.
 */
import { quantity, type Source } from '@firstfire/engine';

const SIZES = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2', '2-1/2', '3', '4', '6', '8'] as const;

/** Feet, by size in the order of `SIZES`. */
const FEET = {
  'elbow-90': [1.5, 2, 2.5, 3.8, 4, 5.7, 6.9, 7.9, 12, 18, 22],
  'elbow-45': [0.8, 1.1, 1.4, 1.8, 2.1, 2.6, 3.1, 4, 5.1, 8, 10.6],
  'tee-through': [1, 1.4, 1.7, 2.3, 2.7, 4.3, 5.1, 6.2, 8.3, 12.5, 16.5],
  'tee-branch': [4, 5, 6, 7, 8, 12, 15, 16, 22, 32.7, 49],
  'gate-valve': [0.3, 0.4, 0.6, 0.8, 1, 1.5, 2, 3],
  adapter: [1, 1.5, 2, 2.8, 3.5, 4.5, 5.5, 6.5, 9, 14],
} as const satisfies Readonly<Record<string, readonly number[]>>;

export type PlasticFittingId = keyof typeof FEET;

export const PLASTIC_EQUIVALENT_SOURCE: Source = {
  document: 'PVC equivalent length friction loss in fittings (table in public circulation)',
  at: 'whole table',
  known: 'read in a public copy',
};

export interface PlasticEquivalent {
  readonly fitting: PlasticFittingId;
  /** Trade size. */
  readonly size: string;
  /** m of straight pipe of that size. */
  readonly length: number;
}

/** Every entry of the table. */
export const PLASTIC_EQUIVALENTS: readonly PlasticEquivalent[] = (
  Object.entries(FEET) as [PlasticFittingId, readonly number[]][]
).flatMap(([fitting, feet]) =>
  feet.map((value, i) => ({ fitting, size: SIZES[i] as string, length: value * quantity.FOOT })),
);

/** Equivalent length (m) of a fitting of one size; undefined where the table has none. */
export function plasticEquivalentLength(fitting: string, size: string): number | undefined {
  return PLASTIC_EQUIVALENTS.find((one) => one.fitting === fitting && one.size === size)?.length;
}
