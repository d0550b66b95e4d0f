export * from './interpolation/index.ts';
export * from './network/index.ts';
export * from './root/index.ts';
