export { type AirJets, airJetLoss } from './air-jets.ts';
export { PLAIN_SURFACE, type SurfaceBalance, surfaceBalance } from './balance.ts';
export * from './convection.ts';
export * from './cover.ts';
export * from './evaporation/index.ts';
export * from './exchange.ts';
export * from './ground.ts';
export { airSpeedIssues, settingIssues, stateIssues } from './issues.ts';
export {
  emptyLosses,
  type SurfaceLosses,
  type SurfaceSetting,
  type SurfaceState,
  surfaceLosses,
} from './losses.ts';
export * from './make-up.ts';
export * from './radiation.ts';
export * from './sky.ts';
export { type Spillway, spillwayArea, spillwaySpeed } from './spillway.ts';
export type { WaterAndAir } from './variables.ts';
export * from './wind.ts';
export { evaporationFlux } from './working.ts';
