/**
 * Least height of a vent's cap above the roof, by the pitch of the roof: a listed cap of 12 in or less, at least 8 ft
 * from any wall that stands higher.
 *
 * Source: IFGC Figure 503.6.4 = NFPA 54-2012 Table 12.7.2, read in the 2018 IRC and the 2013 California Plumbing Code.
 */
import { quantity, type Source } from '@firstfire/engine';

const { FOOT } = quantity;

export const ROOF_PITCH_SOURCE: Source = {
  document: 'International Fuel Gas Code',
  at: 'Figure 503.6.4, as NFPA 54-2012 Table 12.7.2 in the 2013 California Plumbing Code',
  known: 'read in a public copy',
};

/** Up to this rise on a run of 12: height, ft. */
export const CAP_OVER_ROOF: readonly (readonly [rise: number, feet: number])[] = [
  [6, 1],
  [7, 1.25],
  [8, 1.5],
  [9, 2],
  [10, 2.5],
  [11, 3.25],
  [12, 4],
  [14, 5],
  [16, 6],
  [18, 7],
  [20, 7.5],
  [21, 8],
];

/** Least height above a roof of this pitch (rise over run), m; undefined for roofs steeper than 21/12. */
export function leastCapHeight(pitch: number): number | undefined {
  const feet = CAP_OVER_ROOF.find(([rise]) => pitch * 12 <= rise + 1e-9)?.[1];
  return feet === undefined ? undefined : feet * FOOT;
}
