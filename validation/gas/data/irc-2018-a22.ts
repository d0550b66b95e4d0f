/**
 * Equivalent lengths of fittings in feet of Schedule 40 pipe, as printed in the International Residential Code 2018,
 * Appendix A, Table A.2.2 (an excerpt of the fuel gas code's), page 822; first half, all sizes. Inside diameter in inches.
 */
import type { catalog } from '@firstfire/reference';

export const FITTING_COLUMNS: readonly catalog.gas.FittingId[] = [
  'elbow-45',
  'elbow-90',
  'return-bend',
  'tee-branch',
  'welding-elbow-90-r1',
  'welding-elbow-90-r1.33',
  'welding-elbow-90-r2',
  'welding-elbow-90-r4',
  'welding-elbow-90-r6',
  'welding-elbow-90-r8',
];

/** Nominal size → inside diameter (in) and one length (ft) a column. */
export const EQUIVALENT_LENGTHS: Readonly<
  Record<string, { readonly inside: number; readonly feet: readonly number[] }>
> = {
  '1/2': { inside: 0.622, feet: [0.73, 1.55, 3.47, 3.1, 0.83, 0.62, 0.47, 0.36, 0.47, 0.62] },
  '3/4': { inside: 0.824, feet: [0.96, 2.06, 4.6, 4.12, 1.1, 0.82, 0.62, 0.48, 0.62, 0.82] },
  '1': { inside: 1.049, feet: [1.22, 2.62, 5.82, 5.24, 1.4, 1.05, 0.79, 0.61, 0.79, 1.05] },
  '1-1/4': { inside: 1.38, feet: [1.61, 3.45, 7.66, 6.9, 1.84, 1.38, 1.03, 0.81, 1.03, 1.38] },
  '1-1/2': { inside: 1.61, feet: [1.88, 4.02, 8.95, 8.04, 2.14, 1.61, 1.21, 0.94, 1.21, 1.61] },
  '2': { inside: 2.067, feet: [2.41, 5.17, 11.5, 10.3, 2.76, 2.07, 1.55, 1.21, 1.55, 2.07] },
  '2-1/2': { inside: 2.469, feet: [2.88, 6.16, 13.7, 12.3, 3.29, 2.47, 1.85, 1.44, 1.85, 2.47] },
  '3': { inside: 3.068, feet: [3.58, 7.67, 17.1, 15.3, 4.09, 3.07, 2.3, 1.79, 2.3, 3.07] },
  '4': { inside: 4.026, feet: [4.7, 10.1, 22.4, 20.2, 5.37, 4.03, 3.02, 2.35, 3.02, 4.03] },
  '5': { inside: 5.047, feet: [5.88, 12.6, 28.0, 25.2, 6.72, 5.05, 3.78, 2.94, 3.78, 5.05] },
  '6': { inside: 6.065, feet: [7.07, 15.2, 33.8, 30.4, 8.09, 6.07, 4.55, 3.54, 4.55, 6.07] },
  '8': { inside: 7.981, feet: [9.31, 20.0, 44.6, 40.0, 10.6, 7.98, 5.98, 4.65, 5.98, 7.98] },
  '10': { inside: 10.02, feet: [11.7, 25.0, 55.7, 50.0, 13.3, 10.0, 7.51, 5.85, 7.51, 10.0] },
  '12': { inside: 11.94, feet: [13.9, 29.8, 66.3, 59.6, 15.9, 11.9, 8.95, 6.96, 8.95, 11.9] },
  '14': { inside: 13.13, feet: [15.3, 32.8, 73.0, 65.6, 17.5, 13.1, 9.85, 7.65, 9.85, 13.1] },
  '16': { inside: 15.0, feet: [17.5, 37.5, 83.5, 75.0, 20.0, 15.0, 11.2, 8.75, 11.2, 15.0] },
  '18': { inside: 16.88, feet: [19.7, 42.1, 93.8, 84.2, 22.5, 16.9, 12.7, 9.85, 12.7, 16.9] },
  '20': { inside: 18.81, feet: [22.0, 47.0, 105.0, 94.0, 25.1, 18.8, 14.1, 11.0, 14.1, 18.8] },
  '24': { inside: 22.63, feet: [26.4, 56.6, 126.0, 113.0, 30.2, 22.6, 17.0, 13.2, 17.0, 22.6] },
};
