export { type Basin, type BasinGeometry, basinGeometry } from './basin.ts';
export type { DepthPoint, Floor } from './floor.ts';
export type { Hopper } from './hopper.ts';
export type { Plan, Point } from './plan.ts';
