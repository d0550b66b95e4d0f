export * from './heater/index.ts';
export * from './plane/index.ts';
export * from './sound/sound-at-distance.ts';
export * from './wind/standing-moment.ts';
export * from './wind/wind-pressure.ts';
export * from './yard/index.ts';
