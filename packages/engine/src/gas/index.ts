export * from './altitude/index.ts';
export * from './code/index.ts';
export * from './fuel.ts';
export * from './metering/index.ts';
export * from './physical/index.ts';
export * from './sizing/index.ts';
export * from './tank/index.ts';
export * from './testing/index.ts';
