export * from './formula.ts';
export * from './issue.ts';
export * from './recorder.ts';
