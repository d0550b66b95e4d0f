export * from './basin/index.ts';
export * from './climate/index.ts';
export * from './surface/index.ts';
