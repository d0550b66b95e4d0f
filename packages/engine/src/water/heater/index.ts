export * from './exchanger-inlet.ts';
export * from './temperature-rise.ts';
