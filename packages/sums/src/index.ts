export { gasCapacity } from './gas/gas-capacity.ts';
export type { AnySum, ChoiceInput, NumberInput, SumExample, SumInput, SumOutput } from './sum.ts';
