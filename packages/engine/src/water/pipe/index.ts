export * from './darcy-flow.ts';
export * from './darcy-weisbach.ts';
export * from './friction-factor.ts';
export * from './hazen-williams.ts';
export * from './pipe-loss.ts';
export * from './reynolds.ts';
export * from './velocity.ts';
