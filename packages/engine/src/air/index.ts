export * from './supply/index.ts';
export * from './vent/index.ts';
