export * from './derate.ts';
