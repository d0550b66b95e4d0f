export * from './characteristic.ts';
export * from './flow-coefficient.ts';
