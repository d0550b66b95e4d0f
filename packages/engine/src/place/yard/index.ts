export type { Grid } from './ground.ts';
export * from './question.ts';
export * from './yard-map.ts';
