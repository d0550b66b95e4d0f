export * from './device-loss.ts';
export * from './loss-law.ts';
