export * from './canadian-openings.ts';
export * from './combined.ts';
export * from './free-area.ts';
export * from './leak-area.ts';
export * from './mechanical-supply.ts';
export * from './openings.ts';
export * from './room-pull.ts';
export * from './room-volume.ts';
