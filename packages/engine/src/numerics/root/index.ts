export { bracket, type Interval, type Scalar } from './bracket.ts';
export { brentRoot, type RootOptions } from './brent.ts';
export { brentMinimum, type Minimum } from './minimum.ts';
