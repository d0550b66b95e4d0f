export * from './basin/index.ts';
export * from './climate/index.ts';
export * from './sizing/index.ts';
export * from './surface/index.ts';
export * from './tariff/index.ts';
export * from './warm-up/index.ts';
export * from './year/index.ts';
