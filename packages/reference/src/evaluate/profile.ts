/**
 * Which editions hold at a place on a day.
 *
 * A state or province adopts a model code by law, on its own date and with its own amendments; the profile names the
 * model editions this project carries, and the check always tells people to ask the authority at the address.
 */
import { codeEdition } from './editions.ts';

export interface Place {
  /** ISO 3166-1, such as `US`. */
  readonly country: string;
  /** ISO 3166-2 subdivision without its country, such as `CO`. */
  readonly region?: string;
}

export interface Profile {
  readonly place: Place;
  /** ISO date on which the rules are asked. */
  readonly date: string;
  readonly editions: readonly string[];
  /** Subjects for which this project carries no edition at that place. */
  readonly uncovered: readonly CodeSubject[];
  /** Readings that would tell the place, where nobody said it: no code can be looked up, and none is passed over. */
  readonly missing?: readonly string[];
}

export const SUBJECTS = [
  'fuel gas',
  'electrical',
  'pool and spa',
  'mechanical',
  'energy',
  'appliance efficiency',
  'boiler',
] as const;
export type CodeSubject = (typeof SUBJECTS)[number];

export interface Adoption {
  readonly country: string;
  readonly region?: string;
  readonly subject: CodeSubject;
  readonly edition: string;
  /** First day in force there, ISO date. */
  readonly from: string;
}

/** Until adoption dates are carried state by state, the model edition stands for the whole country. */
export const ADOPTIONS: readonly Adoption[] = [
  { country: 'CA', subject: 'fuel gas', edition: 'B149.1-20', from: '2020-01-01' },
  { country: 'CA', subject: 'electrical', edition: 'C22.1-21', from: '2021-03-01' },
  { country: 'US', subject: 'appliance efficiency', edition: '10 CFR 430', from: '1990-01-01' },
  { country: 'US', subject: 'boiler', edition: 'State boiler laws', from: '1990-01-01' },
  { country: 'US', subject: 'electrical', edition: 'NEC 2011', from: '2010-08-25' },
  { country: 'US', subject: 'electrical', edition: 'NEC 2017', from: '2016-08-24' },
  { country: 'US', subject: 'energy', edition: 'IECC 2015', from: '2014-06-03' },
  { country: 'US', subject: 'energy', edition: 'IECC 2018', from: '2017-08-31' },
  { country: 'US', subject: 'fuel gas', edition: 'IFGC 2018', from: '2017-08-31' },
  { country: 'US', subject: 'pool and spa', edition: 'ISPSC 2021', from: '2020-12-01' },
  { country: 'US', region: 'CA', subject: 'electrical', edition: 'NEC 2011', from: '2014-01-01' },
  { country: 'US', region: 'CA', subject: 'electrical', edition: 'NEC 2017', from: '2020-01-01' },
  { country: 'US', region: 'CA', subject: 'energy', edition: 'Title 24 2013', from: '2014-07-01' },
  { country: 'US', region: 'CA', subject: 'energy', edition: 'Title 24 2019', from: '2020-01-01' },
  { country: 'US', region: 'CA', subject: 'energy', edition: 'Title 24 2022', from: '2023-01-01' },
  { country: 'US', region: 'CA', subject: 'energy', edition: 'Title 24 2025', from: '2026-01-01' },
  { country: 'US', region: 'CA', subject: 'mechanical', edition: 'UMC 2012', from: '2014-01-01' },
  { country: 'US', region: 'CA', subject: 'mechanical', edition: 'UMC 2021', from: '2023-01-01' },
];

const kept = new Map<string, Profile>();
const MOST_KEPT = 100;

/**
 * The editions in force at a place on a day: for each subject the newest adoption, a region's before its country's.
 * The same profile for the same place and day, so that what follows from one can be kept with it.
 */
export function profileOf(place: Place, date: string): Profile {
  const key = JSON.stringify([place.country, place.region, date]);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = newProfile(place, date);
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(key, made);
  return made;
}

function newProfile(place: Place, date: string): Profile {
  const editions: string[] = [];
  const uncovered: CodeSubject[] = [];
  for (const subject of SUBJECTS) {
    const adopted = ADOPTIONS.filter(
      (a) => a.subject === subject && holdsAt(a, place) && a.from <= date,
    ).sort(
      (a, b) => Number(b.region !== undefined) - Number(a.region !== undefined) || (a.from < b.from ? 1 : -1),
    )[0];
    if (adopted === undefined) uncovered.push(subject);
    else editions.push(adopted.edition);
  }
  return { place, date, editions, uncovered };
}

function holdsAt(adoption: Adoption, place: Place): boolean {
  return (
    adoption.country === place.country && (adoption.region === undefined || adoption.region === place.region)
  );
}

/**
 * The same place and day under another edition of one of its codes, as if it had been adopted there.
 * An edition that is not listed is no profile: undefined.
 */
export function profileUnder(profile: Profile, edition: string): Profile | undefined {
  const wanted = codeEdition(edition);
  if (wanted === undefined) return undefined;
  const others = profile.editions.filter((id) => codeEdition(id)?.subject !== wanted.subject);
  const uncovered = profile.uncovered.filter((subject) => subject !== wanted.subject);
  return { ...profile, editions: [...others, edition], uncovered };
}
