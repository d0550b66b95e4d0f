export * from './code/low-pressure.ts';
export * from './fuel.ts';
