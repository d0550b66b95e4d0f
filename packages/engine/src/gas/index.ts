export * from './code/index.ts';
export * from './fuel.ts';
export * from './sizing/index.ts';
