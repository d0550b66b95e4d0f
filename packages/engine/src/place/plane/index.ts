export * from './orientation.ts';
export * from './point.ts';
export * from './polygon.ts';
export * from './segment.ts';
export * from './shape-distance.ts';
export * from './shape-issue.ts';
