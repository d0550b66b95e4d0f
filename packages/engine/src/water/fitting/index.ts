export * from './change-of-section.ts';
export * from './complete-turbulence.ts';
export * from './equivalent-length.ts';
export * from './minor-loss.ts';
