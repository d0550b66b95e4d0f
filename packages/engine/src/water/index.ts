export * from './fitting/index.ts';
export * from './heater/index.ts';
export * from './pipe/index.ts';
export * from './pool/index.ts';
export * from './pump/index.ts';
export * from './valve/index.ts';
export * from './water-at.ts';
