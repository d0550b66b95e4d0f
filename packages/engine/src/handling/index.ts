export * from './lift-frequency.ts';
export * from './lift-limit.ts';
