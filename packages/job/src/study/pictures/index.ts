export type { GasState } from '../plant/gas/physical-system.ts';
export { type GasChange, GasDrawing, type GasPart, type GasPen } from './gas-edits.ts';
export { type GasLook, gasPictureOf } from './gas-picture.ts';
export { gasPlusMinus } from './gas-plus-minus.ts';
export type * from './gas-shown.ts';
export { gasSizeTried, type SizeTrial, type SizeTried } from './gas-sizes.ts';
export { waterCurvesOf } from './water-curves.ts';
export { waterPictureOf } from './water-picture.ts';
export type * from './water-shown.ts';
