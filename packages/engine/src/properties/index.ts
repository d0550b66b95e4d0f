export * from './water/index.ts';
