/** How many ways of filling the parts of the bar of losses there are. */
export const PATTERNS = 6;
