export * from './best-spots.ts';
export type { Grid } from './ground.ts';
export * from './question.ts';
export * from './spot-limits.ts';
export * from './yard-map.ts';
