export * from './pressure-limits.ts';
export * from './steam-capacity.ts';
