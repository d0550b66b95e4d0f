export * from './equivalent-lengths.ts';
export * from './fittings.ts';
export * from './loss-tables.ts';
export * from './pipe.ts';
export * from './pool-rules.ts';
export * from './pump-test-curves.ts';
