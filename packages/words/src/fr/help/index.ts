/** Where readings are found and how they are taken. */

export const HELP: Readonly<Record<string, string>> = {};
