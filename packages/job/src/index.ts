export * from './file/index.ts';
export * from './log/index.ts';
export * from './ports/index.ts';
export {
  HOW_KNOWN,
  type HowKnown,
  jobFileSchema,
  RECORD_BY_COLLECTION,
  RECORDS as RECORD_SPECS,
  type Reading,
  type SurveyRecords,
  surveyRecords,
} from './schema/index.ts';
export * from './study/index.ts';
