export { jobViewOf } from './job-view.ts';
export * from './study.ts';
export { type VariantName, variantsOf, variantView } from './variant.ts';
export type { JobView, ReadingPath, RecordView } from './view.ts';
export { type WorkedFact, type Working, workingOf } from './working.ts';
export * from './year.ts';
