/**
 * Capacities (kBtu/h of natural gas, 1000 Btu/ft3) of Schedule 40 pipe for a drop (in w.c.) each 100 ft, as printed in
 * the Michigan Residential Code 2015, Appendix A.3.4; rows after 1.0 in w.c. are cut off in the public copy.
 */
export const HUNDRED_FOOT_SIZES = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2'] as const;

export const HUNDRED_FOOT_ROWS: Readonly<Record<string, readonly number[]>> = {
  '0.2': [31, 64, 121, 248, 372, 716],
  '0.3': [38, 79, 148, 304, 455, 877],
  '0.5': [50, 104, 195, 400, 600, 1160],
  '1.0': [71, 147, 276, 566, 848, 1640],
};
