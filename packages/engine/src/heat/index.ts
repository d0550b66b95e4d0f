export * from './basin/index.ts';
export * from './climate/index.ts';
