/** What a job needs from the world, each with the tests an adapter has to pass. */
export * from './acceptance.ts';
export * from './clock.ts';
export * from './digest.ts';
export * from './ids.ts';
export * from './memory-storage.ts';
export * from './sha256.ts';
export * from './storage.ts';
export * from './storage-acceptance.ts';
export * from './utf8.ts';
