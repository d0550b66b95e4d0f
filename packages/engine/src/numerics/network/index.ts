export { buildNetwork } from './build.ts';
export { frictionFactor, frictionSlope } from './friction.ts';
export type * from './law.ts';
export type { Network } from './network.ts';
export type { LinkState, SolveOptions, SolveReport } from './report.ts';
