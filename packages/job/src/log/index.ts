/** The log a job is made of: operations, their fold, and what writes and joins them. Rules: SPEC.md. */
export * from './check-operation.ts';
export * from './compare.ts';
export * from './document.ts';
export * from './envelope.ts';
export * from './findings.ts';
export * from './fold.ts';
export * from './hlc.ts';
export * from './json.ts';
export * from './names.ts';
export * from './order-key.ts';
export * from './pen.ts';
export * from './plain.ts';
export * from './reading.ts';
export * from './record-value.ts';
export * from './survey.ts';
export * from './union.ts';
