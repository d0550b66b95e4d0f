/** npm run coverage: docs/coverage.md, made from the rules themselves, and docs/proof.md, made from their proofs. */
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  ADOPTIONS,
  type AnyRule,
  CODE_EDITIONS,
  editionChain,
  LICENCES,
  LINES,
  RULES,
  SUBJECTS,
} from '@firstfire/reference';
import { ENGLISH } from '@firstfire/words';
import { CODE_SUBJECT_ROWS } from './code-subjects.ts';
import { writeProofPage } from './proof-page.ts';

export const COVERAGE = join(dirname(dirname(fileURLToPath(import.meta.url))), 'docs', 'coverage.md');

const words = ENGLISH;

/** The page as the rules give it. */
export function coveragePage(): string {
  const parts = [
    '# What is covered',
    'Made by `npm run coverage` from the rules; the test run compares it. Each row is one rule in one edition, with how its figure is known. *From memory*, and any rule read in an earlier edition than the one in force, always says *check the book*. What is not here is not checked: ask the authority at the address.',
    '## Editions',
    table(
      ['edition', 'subject', 'where it was not read, this stands in'],
      CODE_EDITIONS.map(({ id, subject, follows }) => [id, subject, follows ?? '']),
    ),
    `Subjects a place can be asked about: ${SUBJECTS.join(', ')}. A subject without an edition for a place is named at the head of every check.`,
    '## Subjects of the codes',
    'What a heater meets in the codes, and the rules that answer it. A rule of a nameplate, of practice or of physics holds in both countries. What is left open is said with its reason.',
    subjectTable(),
    '## Licences and permits',
    'By kind of work, from memory: *check with the authority at the address*.',
    licenceTable(),
    ...LINES.flatMap((line) => {
      const rules = RULES.filter((rule) => rule.line === line);
      const name = `## ${words.lines[line] ?? line}`;
      return rules.length === 0 ? [name, 'Not built.'] : [name, ruleTable(rules)];
    }),
  ];
  return `${parts.join('\n\n')}\n`;
}

const COUNTRIES = [
  ['US', 'United States'],
  ['CA', 'Canada'],
] as const;

/** Whether a rule is asked anywhere in a country. */
export function isAskedIn(country: string, { editions }: AnyRule): boolean {
  const adopted = new Set(
    ADOPTIONS.filter((one) => one.country === country).flatMap((one) => editionChain(one.edition)),
  );
  return editions.some(({ edition }) => edition === 'any' || adopted.has(edition));
}

function subjectTable(): string {
  return table(
    ['subject', ...COUNTRIES.map(([, name]) => name), 'not answered'],
    CODE_SUBJECT_ROWS.map(({ subject, rules, open }) => [
      subject,
      ...COUNTRIES.map(([country]) => {
        const asked = RULES.filter((rule) => rules.includes(rule.id) && isAskedIn(country, rule));
        return asked.length === 0 ? 'none' : asked.map(({ id }) => `\`${id}\``).join(', ');
      }),
      open.join('. '),
    ]),
  );
}

function licenceTable(): string {
  return table(
    ['place', 'work', 'who', 'permit'],
    LICENCES.map(({ country, region, work, who, permit }) => [
      region === undefined ? country : `${country}-${region}`,
      work,
      who,
      permit,
    ]),
  );
}

function ruleTable(rules: readonly AnyRule[]): string {
  return table(
    ['rule', 'what it checks', 'edition', 'source', 'how known'],
    rules.flatMap((rule) =>
      rule.editions.map(({ edition, source }) => [
        `\`${rule.id}\``,
        words.rules[rule.id]?.title ?? '',
        edition === 'any' ? '' : edition,
        [source.document, source.at].filter(Boolean).join(', '),
        source.known,
      ]),
    ),
  );
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

if (import.meta.main) {
  writeFileSync(COVERAGE, coveragePage());
  writeProofPage();
}

/** What stands in the repository now. */
export function coverageNow(): string {
  return readFileSync(COVERAGE, 'utf8');
}
