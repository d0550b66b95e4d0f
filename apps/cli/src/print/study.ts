/** A study for a terminal: the six lines at a glance, then every finding, worst first. */
import type { JobFile, JobView, LineStudy, Study } from '@firstfire/job';
import { type Finding, findingId } from '@firstfire/reference';
import { fill, issueSentence, subjectText, wordsOf } from '@firstfire/words';
import { type Paint, painter } from './colour.ts';
import { marginText, outcomeText, type System, show, unitsOf } from './finding-text.ts';
import { readingName, siteText } from './job-text.ts';
import { columns, wrap } from './table.ts';
import { oneLine } from './visible.ts';

export interface PrintContext {
  readonly view: JobView;
  readonly system: System;
  readonly file: JobFile;
  readonly colour: boolean;
}

const WIDTH = 100;
const words = wordsOf('en');

export function printStudy(study: Study, context: PrintContext): string {
  const paint = painter(context.colour);
  const parts = [
    header(study, context, paint),
    glance(study, paint),
    ...study.lines.filter((line) => line.built).map((line) => lineText(line, context, paint)),
    issuesText(study, context),
    wrap(words.phrases['safety'] ?? '', WIDTH, ''),
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

function header({ profile }: Study, { view, system }: PrintContext, paint: Paint): string {
  const editions = profile.editions.join(', ') || words.phrases['no-edition'];
  const rules = fill(words.phrases['rules-in-force'] ?? '', { date: profile.date, editions: editions ?? '' });
  const uncovered =
    profile.uncovered.length === 0
      ? ''
      : fill(words.phrases['uncovered'] ?? '', { subjects: profile.uncovered.join(', ') });
  const volumes = system === 'si' ? '' : (words.phrases['standard-volume'] ?? '');
  const notes = [rules, uncovered, volumes].filter((note) => note !== '').join(' ');
  return [paint(siteText(view, system), 'bold'), wrap(notes, WIDTH, '')].join('\n');
}

/** One row a line: the verdict of its worst finding, or that there is no check yet. */
function glance({ lines }: Study, paint: Paint): string {
  const rows = lines.map((line) => {
    const name = words.lines[line.line] ?? line.line;
    if (!line.built) return [name, words.verdicts['not built'], ''];
    const [worst] = line.findings;
    if (worst === undefined || worst.verdict === 'does not apply')
      return [name, words.verdicts['does not apply'], ''];
    const verdict = `${words.verdicts[worst.verdict]} ${marginText(worst)}`.trim();
    return [name, verdict, `${words.rules[worst.rule]?.title ?? worst.rule}${about(worst)}`];
  });
  const text = columns(rows);
  return text
    .split('\n')
    .map((row, index) => paintVerdict(row, lines[index], paint))
    .join('\n');
}

function paintVerdict(row: string, line: LineStudy | undefined, paint: Paint): string {
  if (line === undefined) return row;
  return paint(row, line.built ? (line.findings[0]?.verdict ?? 'does not apply') : 'not built');
}

function lineText(line: LineStudy, context: PrintContext, paint: Paint): string {
  const title = paint((words.lines[line.line] ?? line.line).toUpperCase(), 'bold');
  return [title, ...line.findings.map((finding) => findingText(finding, context, paint))].join('\n');
}

function findingText(finding: Finding, { system }: PrintContext, paint: Paint): string {
  const verdict = words.verdicts[finding.verdict].padEnd(8);
  const margin = marginText(finding).padStart(7);
  const title = `${words.rules[finding.rule]?.title ?? finding.rule}${about(finding)}`;
  const first = `  ${paint(`${verdict}${margin}`, finding.verdict)}  ${title}`;
  if (finding.verdict === 'does not apply') return first;
  const details = [detail(finding, system), citation(finding)].filter((part) => part !== '');
  const id = paint(findingId(finding), 'dim');
  return [first, wrap(details.join(' · '), WIDTH, ' '.repeat(19)), `${' '.repeat(19)}${id}`].join('\n');
}

function detail(finding: Finding, system: System): string {
  if (finding.verdict === 'unknown') {
    return fill(words.phrases['missing'] ?? '', { readings: finding.missing.map(readingName).join(', ') });
  }
  const assumed =
    finding.assumed.length === 0
      ? ''
      : ` (${fill(words.phrases['assumes'] ?? '', { readings: finding.assumed.map(readingName).join(', ') })})`;
  return `${outcomeText(finding, unitsOf(finding, system))}${assumed}`;
}

function citation({ source, checkTheBook }: Finding): string {
  const book = checkTheBook ? ` [${words.phrases['check-the-book']}]` : '';
  return [source.document, source.at].filter(Boolean).join(', ') + book;
}

function about({ subject }: Finding): string {
  const name = oneLine(subjectText(subject, words));
  return name === '' ? '' : ` · ${name}`;
}

function issuesText({ issues }: Study, { system, file }: PrintContext): string {
  const lines = issues.map((issue) =>
    issueSentence(issue, {
      words,
      show: (value, kind) => show(value, kind, { system, medium: 'water' }),
      name: readingName,
    }),
  );
  for (const finding of file.findings) {
    lines.push(
      fill(words.phrases[`file.${finding.code}`] ?? finding.code, {
        place: finding.place.path,
        reason: words.issues[`reason.${finding.reason}`] ?? finding.reason ?? '',
      }),
    );
  }
  for (const finding of file.document.findings) {
    lines.push(
      `${words.phrases[`log.${finding.code}`] ?? finding.code}${finding.where === '' ? '' : `: ${finding.where}`}`,
    );
  }
  if (lines.length === 0) return '';
  return [
    (words.phrases['look-at'] ?? '').toUpperCase(),
    ...lines.map((line) => wrap(line, WIDTH, '  ')),
  ].join('\n');
}
