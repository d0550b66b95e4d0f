export { WATER_FITTINGS, WATER_MATERIALS } from './circulation.ts';
export * from './field.ts';
export * from './gas-piping.ts';
export * from './json-schema.ts';
export * from './record.ts';
export * from './records.ts';
export * from './survey-text.ts';
export * from './written-survey.ts';
