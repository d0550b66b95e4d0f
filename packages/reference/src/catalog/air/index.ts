export * from './common-vent.ts';
export * from './roof-pitch.ts';
export * from './single-wall.ts';
export * from './single-wall-connector.ts';
export * from './type-b.ts';
export * from './vent-connectors.ts';
export * from './vent-rows.ts';
export * from './vent-tables.ts';
