export * from './carrier-index.ts';
export * from './cyanurate.ts';
export * from './saturation-index.ts';
export * from './standard-methods-index.ts';
export * from './table-index.ts';
export * from './water-sample.ts';
