export * from './capacity-table.ts';
export * from './drops.ts';
export * from './size-piping.ts';
export * from './tree.ts';
