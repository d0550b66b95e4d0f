export * from './annual.ts';
export * from './minimum.ts';
export * from './thermal-test.ts';
