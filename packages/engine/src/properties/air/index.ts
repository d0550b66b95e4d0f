export * from './dew-point.ts';
export * from './humidity.ts';
export * from './moist-air.ts';
export * from './saturation.ts';
export * from './wet-bulb.ts';
