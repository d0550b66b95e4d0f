export * from './ampacity.ts';
export * from './conductor.ts';
export * from './conductor-area.ts';
export * from './control-transformer.ts';
export * from './equipment-ground.ts';
export * from './overcurrent.ts';
export * from './supply.ts';
export * from './voltage-drop.ts';
