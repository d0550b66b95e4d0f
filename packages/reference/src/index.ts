export * as catalog from './catalog/index.ts';
export * from './codes/index.ts';
export * from './evaluate/index.ts';
