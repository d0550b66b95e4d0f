export const FORMULAS: Readonly<Record<string, string>> = {};
