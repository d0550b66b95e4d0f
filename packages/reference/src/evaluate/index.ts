export * from './amend.ts';
export * from './editions.ts';
export * from './evaluate.ts';
export * from './fact.ts';
export * from './finding.ts';
export * from './margin.ts';
export * from './profile.ts';
export * from './rule.ts';
