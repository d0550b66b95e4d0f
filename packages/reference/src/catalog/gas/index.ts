export * from './csst.ts';
export * from './fittings.ts';
export * from './pipe.ts';
export * from './purge.ts';
