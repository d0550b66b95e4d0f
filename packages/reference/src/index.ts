export * from './codes/index.ts';
export * from './evaluate/index.ts';
