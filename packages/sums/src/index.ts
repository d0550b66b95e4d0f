export { gasCapacity } from './gas/gas-capacity.ts';
export { SUMS } from './list.ts';
export type { AnySum, ChoiceInput, NumberInput, SumExample, SumInput, SumOutput } from './sum.ts';
export { fittingLoss } from './water/fitting-loss.ts';
export { pipeLoss } from './water/pipe-loss.ts';
export { staticHead } from './water/static-head.ts';
export { temperatureRise } from './water/temperature-rise.ts';
export { turnover } from './water/turnover.ts';
