export * from './air/index.ts';
export * from './atmosphere/index.ts';
export * from './fuel/index.ts';
export * from './water/index.ts';
