export * from './affinity.ts';
export * from './curve.ts';
export * from './npsh.ts';
export * from './power.ts';
export * from './speed-curve.ts';
export * from './stopped.ts';
export * from './total-head.ts';
