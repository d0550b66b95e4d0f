export { type Crowd, crowdOf, MOST_RECORDS } from './facts/crowd.ts';
export { jobViewOf } from './facts/job-view.ts';
export { type PlainJob, plainView } from './facts/plain-view.ts';
export { type VariantName, variantsOf, variantView } from './facts/variant.ts';
export type { JobView, ReadingPath, RecordView } from './facts/view.ts';
export { type Change, changesBetween } from './findings/compare.ts';
export * from './findings/study.ts';
export { type WorkedFact, type Working, workingOf } from './findings/working.ts';
export * from './year/index.ts';
