export { linearTable } from './linear.ts';
export { monotoneCubicTable } from './monotone-cubic.ts';
export type { Extrapolation, Table, TableSpec } from './table.ts';
