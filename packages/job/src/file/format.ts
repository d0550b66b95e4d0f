/**
 * The job file, on disk. What counts as a change of the format, and what to do then, stands in FORMAT.md.
 *
 *     { "format": "firstfire-job", "version": 1, "document": { … }, "log": [ … ] }
 */
export const FILE_FORMAT = 'firstfire-job';
export const FILE_VERSION = 1;
export const LOG_MEMBER = 'log';

/** Deepest nesting of a job file: the file, its log, an operation, its value. */
export const MAX_FILE_DEPTH = 40;
/** Longest job file, characters: some hundred thousand operations. */
export const MAX_FILE_LENGTH = 64 * 1024 * 1024;
