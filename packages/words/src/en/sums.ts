export const SUMS: Readonly<Record<string, string>> = {};
