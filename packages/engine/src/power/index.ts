export * from './ampacity.ts';
export * from './conductor.ts';
export * from './voltage-drop.ts';
