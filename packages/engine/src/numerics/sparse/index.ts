export * from './columns.ts';
export * from './kept-structure.ts';
export * from './ldl.ts';
export * from './minimum-degree.ts';
export * from './structure.ts';
