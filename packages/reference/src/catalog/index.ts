export * as gas from './gas/index.ts';
