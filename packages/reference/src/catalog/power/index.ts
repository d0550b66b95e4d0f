export * from './copper.ts';
