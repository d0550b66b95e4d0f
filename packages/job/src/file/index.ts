/** The job file: reading it whatever it holds, and writing it. */
export * from './format.ts';
export * from './issue.ts';
export * from './read.ts';
export * from './write.ts';
