export * from './amend.ts';
export * from './editions.ts';
export { byUrgency, editionInForce, evaluateRules } from './evaluate.ts';
export * from './fact.ts';
export * from './finding.ts';
export { KeptFindings } from './kept-findings.ts';
export * from './margin.ts';
export * from './profile.ts';
export * from './rule.ts';
