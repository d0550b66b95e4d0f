export * from './components.ts';
export * from './emissions.ts';
export * from './mixture.ts';
