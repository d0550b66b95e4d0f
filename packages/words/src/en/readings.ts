export const READINGS: Readonly<Record<string, string>> = {};
