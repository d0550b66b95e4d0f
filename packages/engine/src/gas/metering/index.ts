export * from './clock.ts';
export * from './clock-meter.ts';
