export * as air from './air/index.ts';
export * as climate from './climate/index.ts';
export * as gas from './gas/index.ts';
export * as power from './power/index.ts';
export * as water from './water/index.ts';
