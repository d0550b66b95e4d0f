export * from './clearance.ts';
export * from './footprint.ts';
export * from './thing.ts';
