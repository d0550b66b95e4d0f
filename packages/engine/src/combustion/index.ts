export * from './co-air-free.ts';
export * from './condensate.ts';
export * from './efficiency.ts';
export * from './excess-air.ts';
export * from './flue-gas.ts';
export * from './flue-loss.ts';
export * from './fuel.ts';
export * from './gas-enthalpy.ts';
