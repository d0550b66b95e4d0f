export * from './gas.ts';
export { UNITS } from './table.ts';
