/**
 * A study: everything that can be said of a job as it stands. Readings become facts, the plant adds what follows from
 * them, and the rules in force at the address judge both.
 */
import type { Issue } from '@firstfire/engine';
import {
  amendedRules,
  BUILT_LINES,
  byUrgency,
  CODE_EDITIONS,
  evaluateRules,
  type Finding,
  LINES,
  type Line,
  type Profile,
  profileOf,
  profileUnder,
  RULES,
} from '@firstfire/reference';
import { amendmentsOf } from '../facts/amendments.ts';
import { Book } from '../facts/book.ts';
import { addDirectFacts } from '../facts/direct.ts';
import { fieldFact } from '../facts/field-fact.ts';
import { addSubjects } from '../facts/subjects.ts';
import { type JobView, readingPath } from '../facts/view.ts';
import { wrongReadings } from '../facts/wrong-readings.ts';
import { addModelFacts } from '../plant/model-facts.ts';
import { plantModels } from '../plant/models.ts';
import type { KeptStudy } from './kept-study.ts';

export interface LineStudy {
  readonly line: Line;
  /** False where the project has no rule for the line yet: it says *not built*, and nothing else. */
  readonly built: boolean;
  /** Worst first. */
  readonly findings: readonly Finding[];
}

export interface Study {
  readonly profile: Profile;
  readonly lines: readonly LineStudy[];
  /** Readings that cannot be what they say, and parts of the plant that have no solution. */
  readonly issues: readonly Issue[];
}

export interface StudyOptions {
  /** ISO date on which the rules are asked, where the job names none. */
  readonly today: string;
  /** False for a quick look: judged by the guards alone, without the ± of the readings. */
  readonly uncertainty?: boolean;
  /** Asks the rules of this edition in place of the one in force for its subject; see `CODE_EDITIONS`. */
  readonly edition?: string;
  /** Where one job is studied again and again: what earlier studies worked out and still stands. */
  readonly kept?: KeptStudy;
}

export function study(view: JobView, { today, uncertainty = true, edition, kept }: StudyOptions): Study {
  const book = new Book();
  addSubjects(book, view);
  addDirectFacts(book, view);
  const issues = new Map<string, Issue>();
  const keep = (found: readonly Issue[]): void => {
    for (const issue of found) issues.set(`${issue.where} ${issue.code} ${issue.reason ?? ''}`, issue);
  };
  keep(wrongReadings(view));
  for (const model of plantModels(view, kept?.models))
    keep(addModelFacts(book, model, { uncertainty, kept: kept?.models }));
  const asked = profileAt(view, today);
  keep(asked.issues);
  const under = edition === undefined ? asked.profile : profileUnder(asked.profile, edition);
  if (under === undefined) keep([noSuchEdition(edition)]);
  const profile = under ?? asked.profile;
  const entered = amendmentsOf(view);
  const { rules, issues: unread } = amendedRules(RULES, entered.amendments, { book, profile });
  keep(entered.issues);
  keep(unread);
  const found = kept?.findings.evaluate(rules, book, profile) ?? evaluateRules(rules, book, profile);
  const findings = found.sort(byUrgency);
  const lines = LINES.map((line) => ({
    line,
    built: BUILT_LINES.has(line),
    findings: findings.filter((finding) => finding.line === line),
  }));
  return { profile, lines, issues: [...issues.values()] };
}

/** The rules in force are then asked as they are. */
function noSuchEdition(found = ''): Issue {
  const expected = CODE_EDITIONS.map(({ id }) => id);
  return { code: 'not-understood', where: 'edition', found, expected, reason: 'no-such-edition' };
}

interface Asked {
  readonly profile: Profile;
  readonly issues: readonly Issue[];
}

/** The editions in force for a job: at its address, on its day. */
export function profileOfJob(view: JobView, today: string): Profile {
  return profileAt(view, today).profile;
}

/** The rules of the place on the day of the job; today's where the job's is no day. */
function profileAt(view: JobView, today: string): Asked {
  const word = (collection: string, field: string): string => {
    const fact = fieldFact(collection, field, view.record(collection, '-').reading(field));
    return fact.state === 'word' ? fact.value : '';
  };
  const [country, region, date] = [word('site', 'country'), word('site', 'region'), word('job', 'date')];
  const isDate = date === '' || isDay(date);
  const place = { country: country || 'unknown', ...(region === '' ? {} : { region }) };
  const profile = profileOf(place, isDate && date !== '' ? date : today);
  return {
    profile: country === '' ? { ...profile, missing: [readingPath('site', '-', 'country')] } : profile,
    issues: isDate
      ? []
      : [
          {
            code: 'not-understood',
            where: readingPath('job', '-', 'date'),
            found: date,
            reason: 'day-expected',
          },
        ],
  };
}

/** Whether a text is a day of the calendar, `2026-09-14`. */
function isDay(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  if (year === undefined) return false;
  const read = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  return read.getUTCMonth() + 1 === Number(month) && read.getUTCDate() === Number(day);
}
