/** Size and length from which the fuel-gas code asks for purging outdoors through inert gas. */
import { gas, quantity } from '@firstfire/engine';

const { FOOT, INCH } = quantity;

export const OUTDOOR_PURGE: gas.PurgeRule = {
  pressureOver: gas.PURGE_OUTDOORS_OVER,
  source: {
    document: 'International Residential Code 2018',
    at: 'Table G2417.7.1.1 (International Fuel Gas Code 406.7.1.1); pressure of the 2021 Uniform Plumbing Code 1213.6.1',
    known: 'read in a public copy',
  },
  rows: [
    { nominalFrom: 2.5 * INCH, nominalBelow: 3 * INCH, lengthOver: 50 * FOOT },
    { nominalFrom: 3 * INCH, nominalBelow: 4 * INCH, lengthOver: 30 * FOOT },
    { nominalFrom: 4 * INCH, nominalBelow: 6 * INCH, lengthOver: 15 * FOOT },
    { nominalFrom: 6 * INCH, nominalBelow: 8 * INCH, lengthOver: 10 * FOOT },
    { nominalFrom: 8 * INCH, lengthOver: 0 },
  ],
};

/** CSST of EHD 62 counts as nominal 2 in (a note of that table), so no corrugated tubing reaches it. */
export const EHD_62_NOMINAL = 2 * INCH;
