/** The job file: reading it whatever it holds, writing it, and joining it to a log. Rules: FORMAT.md. */
export * from './format.ts';
export * from './import.ts';
export * from './issue.ts';
export * from './jobs-file.ts';
export { type OperationLines, readOperationLines, writeOperationLines } from './lines.ts';
export * from './read.ts';
export * from './write.ts';
