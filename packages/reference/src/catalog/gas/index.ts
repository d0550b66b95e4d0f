export * from './fittings.ts';
export * from './pipe.ts';
