export * from './tank-state.ts';
export * from './trade-rule.ts';
export * from './vapour-pressure.ts';
export * from './wetted-shell.ts';
