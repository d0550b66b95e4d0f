export { type GasCases, solveGasCases } from './cases.ts';
export {
  type CorrugatedFit,
  type CorrugatedFlow,
  type CorrugatedTube,
  corrugatedFit,
  corrugatedOutlet,
  referenceFlow,
} from './corrugated-law.ts';
export { explainPressure } from './explain-pressure.ts';
export type { GasSolution } from './gas-solution.ts';
export { AIR_DENSITY, type GasState, gasState } from './gas-state.ts';
export { compileGasSystem, type GasCase, type GasSystem } from './gas-system.ts';
export * from './isothermal-flow.ts';
export { MANIFOLD_PRESSURE } from './load-law.ts';
export { gaugeReading, meterOutlet, regulatorOutlet, wideOpenOutlet } from './outlet-formulas.ts';
export {
  gasFrictionFactor,
  gasReynolds,
  ISOTHERMAL_SOURCE,
  type PipeBody,
  type PipeFlow,
  pipeOutlet,
} from './pipe-law.ts';
export type * from './system-spec.ts';
