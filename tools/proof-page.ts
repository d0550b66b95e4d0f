/** docs/proof.md: how far each rule is proved, and what random jobs made of them. Written by `npm run coverage`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { RULES } from '@firstfire/reference';
import { PROOFS } from '../packages/reference/src/codes/limits.table.ts';
import { faultsOf, isOther, mutantsOf } from '../packages/reference/src/codes/proof/index.ts';
import { verdictsOf } from './random-run.ts';
import { soaked } from './soaked.ts';
import { UNREACHED } from './unreached.ts';

const PAGE = fileURLToPath(new URL('../docs/proof.md', import.meta.url));

/** The page as the proofs and the last soak give it. */
export function proofPage(): string {
  return `${[
    '# How the rules are proved',
    'Made by `npm run coverage` from the proofs that stand beside the rules and from the last full soak; the test run compares it.',
    ...HELD,
    ...soakPart(),
    '## Verdicts that each rule can give',
    'A yes or no is never tight, nor is a limit that is built to. *n/a*: does not apply.',
    verdictTable(),
  ].join('\n\n')}\n`;
}

const HELD = [
  '## Just under, at and over',
  'A proof is written from the source a rule cites, in the units the source prints, and never read from the rule. Each limit is looked at half a yardstick, a thousandth and a millionth under it, at it, in the last bit either side of it, a millionth and a thousandth over it, just inside and just outside its guard, and far over it: verdict, sign and size of the margin, figure asked. Each fact the rule needs is taken away in turn, and each is made one that does not apply. Each entry is asked on its first day and the day before.',
  countTable(),
  'A rule made wrong on purpose: every figure, word and day of an entry moved, limits, yardsticks and ends of bands off by a thousandth, every answer turned, the guard shifted. A proof that lets one of them pass fails the tests.',
];

function countTable(): string {
  const cases = PROOFS.flatMap((proof) => proof.cases);
  const of = (...senses: readonly string[]): number =>
    cases.filter(({ sense }) => senses.includes(sense)).length;
  return table(
    ['', 'number'],
    [
      ['rules', RULES.length],
      ['entries of rules in editions', RULES.flatMap(({ editions }) => editions).length],
      ['limits', of('at-least', 'at-most')],
      ['bands, two limits each', of('within')],
      ['answers', of('answer')],
      ['rules made wrong, all found out', mutants()],
    ],
  );
}

function mutants(): number {
  return RULES.flatMap((rule) => rule.editions.map((edition) => ({ rule, edition })))
    .flatMap((asked) => {
      const proof = PROOFS.find((one) => one.rule === asked.rule.id && one.edition === asked.edition.edition);
      return proof === undefined ? [] : mutantsOf(asked).map((mutant) => ({ mutant, proof }));
    })
    .filter(({ mutant, proof }) => faultsOf(mutant, proof).length > 0 && isOther(mutant)).length;
}

function soakPart(): readonly string[] {
  const runs = soaked();
  const never = runs.at(-1)?.never ?? [];
  return [
    '## Random jobs',
    `What \`npm run soak\` runs: an example at another address on another day, its numbers stretched, its words exchanged, readings gone and readings it never had. None threw, gave a number that is none, a verdict without a source, or an unknown that names nothing to settle it; every two-hundredth was asked with the ± of all its readings.`,
    table(
      ['jobs', 'from seed', 'entries of rules there were'],
      runs.map(({ jobs, firstSeed, entries }) => [jobs.toLocaleString('en-US'), firstSeed, entries]),
    ),
    never.length === 0
      ? 'Every rule was asked in every edition, and came to every verdict it can give.'
      : `In the last of them, never reached:\n\n${table(
          ['rule', 'why'],
          never.map((name) => [name, UNREACHED[name] ?? '']),
        )}`,
  ];
}

function verdictTable(): string {
  return table(
    ['rule', 'verdicts'],
    RULES.map(({ id }) => [
      `\`${id}\``,
      [...verdictsOf(id)]
        .map((one) => (one === 'does not apply' ? 'n/a' : one))
        .sort()
        .join(', '),
    ]),
  );
}

function table(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const line = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** What stands in the repository now. */
export function proofPageNow(): string {
  return readFileSync(PAGE, 'utf8');
}

export function writeProofPage(): void {
  writeFileSync(PAGE, proofPage());
}

if (import.meta.main) writeProofPage();
