export * from './carrier.ts';
export {
  CORRUGATED_SOURCE,
  type CorrugatedSize,
  type CorrugatedTable,
  corrugatedDrop,
  corrugatedFlow,
  corrugatedLength,
  corrugatedTableLength,
} from './corrugated.ts';
export * from './equivalent-length.ts';
export * from './factors.ts';
export * from './gravity.ts';
export * from './high-pressure.ts';
export * from './hundred-foot.ts';
export * from './low-pressure.ts';
export * from './sizing-factor.ts';
