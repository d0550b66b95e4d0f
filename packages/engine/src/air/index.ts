export * from './draught.ts';
export * from './openings.ts';
export * from './room-volume.ts';
