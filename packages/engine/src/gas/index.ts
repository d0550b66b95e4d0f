export * from './code/index.ts';
export * from './fuel.ts';
