/** The one public door of the engine: each discipline under its own name. */
export * as air from './air/index.ts';
export * as chemistry from './chemistry/index.ts';
export * as combustion from './combustion/index.ts';
export * as efficiency from './efficiency/index.ts';
export * as gas from './gas/index.ts';
export * as handling from './handling/index.ts';
export * as heat from './heat/index.ts';
export * as numerics from './numerics/index.ts';
export * as place from './place/index.ts';
export * as power from './power/index.ts';
export * as properties from './properties/index.ts';
export * as quantity from './quantity/index.ts';
export * as relief from './relief/index.ts';
export * from './trace/index.ts';
export * as water from './water/index.ts';
