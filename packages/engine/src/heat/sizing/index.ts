export { type Bank, type BankQuestion, heaterBank } from './bank.ts';
export { type Hold, type HoldQuestion, holdOutput } from './hold.ts';
export { RISE_RATES, type SurfaceRule, surfaceRuleInput, surfaceRuleOutput } from './rules.ts';
export { type BasinDemand, heaterSize, type Size, type SizeCase, type SizeQuestion } from './size.ts';
export { outputToWarmUp, type WarmUpWish } from './warm-up-output.ts';
