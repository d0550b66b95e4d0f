export { COLUMNS as EPW_COLUMNS, type ColumnName as EpwColumnName } from './columns.ts';
export type { GroundLayer } from './header.ts';
export { type EpwYear, readEpw } from './read.ts';
