/** Entries of rules by the code they stand in: edition, first day and document said once. */
import type { Edition } from '../evaluate/index.ts';

type Known = Edition<unknown>['source']['known'];

/** Makes the entry of one edition: where it stands there, its figures, and how they are known. */
type Entry = <V>(at: string, values: V, known?: Known) => Edition<V>;

function entryOf(edition: string, from: string, document: string): Entry {
  return (at, values, known = 'from memory') => ({ edition, from, source: { document, at, known }, values });
}

export const ifgc2015 = entryOf('IFGC 2015', '2014-05-30', 'International Fuel Gas Code 2015');
export const ifgc2018 = entryOf('IFGC 2018', '2017-08-31', 'International Fuel Gas Code 2018');
export const b149 = entryOf('B149.1-20', '2020-01-01', 'CSA B149.1');
export const iecc2015 = entryOf('IECC 2015', '2014-06-03', 'International Energy Conservation Code 2015');
export const iecc2018 = entryOf('IECC 2018', '2017-08-31', 'International Energy Conservation Code 2018');
export const ispsc2021 = entryOf('ISPSC 2021', '2020-12-01', 'International Swimming Pool and Spa Code 2021');
export const umc2012 = entryOf('UMC 2012', '2012-01-01', 'Uniform Mechanical Code 2012');
export const title24 = entryOf('Title 24 2013', '2014-07-01', 'California Energy Code 2013');
export const title24of2025 = entryOf('Title 24 2025', '2026-01-01', 'California Energy Code 2025');
export const cfr430 = entryOf('10 CFR 430', '1990-01-01', '10 CFR 430');
export const boilerLaws = entryOf('State boiler laws', '1990-01-01', 'Boiler laws of most states');

/** Where the clause is known to be there, and its number is not. */
export const NO_SECTION = 'section not recalled';
