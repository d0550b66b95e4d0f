export * from './spill.ts';
export * from './static-head.ts';
export * from './surge.ts';
export * from './turnover.ts';
