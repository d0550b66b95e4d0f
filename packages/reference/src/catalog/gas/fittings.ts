/**
 * Fittings of gas pipe as equivalent length over inside diameter (L/D).
 *
 * The code's table of equivalent lengths is L/D times the inside diameter, rounded to three digits, so the ratio is
 * kept and the length computed.
 */
import type { Source } from '@firstfire/engine';

export type FittingId =
  | 'elbow-45'
  | 'elbow-90'
  | 'return-bend'
  | 'tee-branch'
  | 'welding-elbow-90-r1'
  | 'welding-elbow-90-r1.33'
  | 'welding-elbow-90-r2'
  | 'welding-elbow-90-r4'
  | 'welding-elbow-90-r6'
  | 'welding-elbow-90-r8'
  | 'welding-tee-forged'
  | 'welding-tee-mitred'
  | 'gate-valve'
  | 'globe-valve'
  | 'angle-valve'
  | 'swing-check-valve';

export interface Fitting {
  readonly id: FittingId;
  readonly lengthOverDiameter: number;
  readonly source: Source;
}

const READ: Source = {
  document: 'International Residential Code 2018',
  at: 'Appendix A, Table A.2.2 (an excerpt of International Fuel Gas Code 2018 Table A.2.2), row L/d',
  known: 'read in a public copy',
};

const RECALLED: Source = {
  document: 'International Fuel Gas Code 2018',
  at: 'Table A.2.2, second half',
  known: 'from memory',
};

/** Screwed fittings unless the id says welding; the run of a tee counts nothing, its branch counts in full. */
export const FITTINGS: readonly Fitting[] = [
  { id: 'elbow-45', lengthOverDiameter: 14, source: READ },
  { id: 'elbow-90', lengthOverDiameter: 30, source: READ },
  { id: 'return-bend', lengthOverDiameter: 67, source: READ },
  { id: 'tee-branch', lengthOverDiameter: 60, source: READ },
  { id: 'welding-elbow-90-r1', lengthOverDiameter: 16, source: READ },
  { id: 'welding-elbow-90-r1.33', lengthOverDiameter: 12, source: READ },
  { id: 'welding-elbow-90-r2', lengthOverDiameter: 9, source: READ },
  { id: 'welding-elbow-90-r4', lengthOverDiameter: 7, source: READ },
  { id: 'welding-elbow-90-r6', lengthOverDiameter: 9, source: READ },
  { id: 'welding-elbow-90-r8', lengthOverDiameter: 12, source: READ },
  { id: 'welding-tee-forged', lengthOverDiameter: 45, source: RECALLED },
  { id: 'welding-tee-mitred', lengthOverDiameter: 60, source: RECALLED },
  { id: 'gate-valve', lengthOverDiameter: 7, source: RECALLED },
  { id: 'globe-valve', lengthOverDiameter: 333, source: RECALLED },
  { id: 'angle-valve', lengthOverDiameter: 167, source: RECALLED },
  { id: 'swing-check-valve', lengthOverDiameter: 83, source: RECALLED },
];

/** The fitting of an id. */
export function fitting(id: FittingId): Fitting {
  const found = FITTINGS.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no fitting ${id}`);
  return found;
}
