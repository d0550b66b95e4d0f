export * from './contact-limit.ts';
export * from './copper.ts';
export * from './cover.ts';
export * from './overcurrent.ts';
