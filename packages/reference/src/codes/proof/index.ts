export type { FactName } from '../../evaluate/index.ts';
export type { Asked } from './facts-book.ts';
export { faultsOf } from './faults.ts';
export { isOther, mutantsOf } from './mutants.ts';
export * from './proof.ts';
