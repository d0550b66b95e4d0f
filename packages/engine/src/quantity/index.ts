export * from './constants.ts';
export * from './kinds.ts';
