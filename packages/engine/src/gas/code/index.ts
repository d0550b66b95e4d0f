export * from './high-pressure.ts';
export * from './low-pressure.ts';
export * from './sizing-factor.ts';
