export * from './pressure-test.ts';
export * from './purge.ts';
