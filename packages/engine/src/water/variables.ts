/** Symbols, kinds and ranges that the formulas of water share, so that one quantity has one name and one range. */
import type { Variable } from '../trace/index.ts';

/** Inside diameter: from a capillary to a water main. */
export const DIAMETER: Variable = { symbol: 'D', kind: 'diameter', min: 0.001, max: 5 };
export const LENGTH: Variable = { symbol: 'L', kind: 'length', min: 0, max: 1e5 };
export const FLOW: Variable = { symbol: 'Q', kind: 'volume-flow', min: -100, max: 100 };
export const FORWARD_FLOW: Variable = { symbol: 'Q', kind: 'volume-flow', min: 0, max: 100 };
/** Kinematic viscosity: from boiling water to light oil. */
export const VISCOSITY: Variable = { symbol: 'ν', kind: 'kinematic-viscosity', min: 1e-7, max: 1e-3 };
export const ROUGHNESS: Variable = { symbol: 'ε', kind: 'length', min: 0, max: 0.05 };
export const HEAD: Variable = { symbol: 'h', kind: 'head', min: -1e5, max: 1e5 };
export const LOSS: Variable = { symbol: 'h', kind: 'head' };
export const RESISTANCE: Variable = { symbol: 'K', kind: 'ratio', min: 0, max: 1e9 };
export const DENSITY: Variable = { symbol: 'ρ', kind: 'density', min: 500, max: 2000 };
export const EFFICIENCY: Variable = { symbol: 'η', kind: 'ratio', min: 0.001, max: 1 };
/** Speed over the speed of the curve. */
export const SPEED_RATIO: Variable = { symbol: 's', kind: 'ratio', min: 0, max: 3 };
