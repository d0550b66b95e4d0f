export { frictionFactor, frictionSlope } from './friction.ts';
export type * from './law.ts';
export {
  buildNetwork,
  type LinkState,
  type Network,
  type SolveOptions,
  type SolveReport,
} from './network.ts';
