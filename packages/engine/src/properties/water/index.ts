export * from './liquid.ts';
export * from './saturation.ts';
