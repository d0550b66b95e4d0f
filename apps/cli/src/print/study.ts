/** A study for a terminal: the six lines at a glance, then every finding, worst first. */
import type { JobFile, JobView, LineStudy, Study } from '@firstfire/job';
import { dutyOf, type Finding, findingId } from '@firstfire/reference';
import {
  citedText,
  figureText,
  fill,
  issueSentence,
  marginText,
  outcomeText,
  type Reader,
  type Speech,
  sourceText,
  subjectText,
  unitsOf,
} from '@firstfire/words';
import { type Paint, painter } from './colour.ts';
import { readingName, siteText } from './job-text.ts';
import { columns, wrap } from './table.ts';
import { oneLine } from './visible.ts';

export interface PrintContext {
  readonly view: JobView;
  readonly reader: Reader;
  readonly file: JobFile;
  readonly colour: boolean;
}

const WIDTH = 100;

const INDENT = ' '.repeat(19);

export function printStudy(study: Study, context: PrintContext): string {
  const paint = painter(context.colour);
  const { speech } = context.reader;
  const parts = [
    header(study, context, paint),
    glance(study, speech, paint),
    ...study.lines
      .filter((line) => line.built)
      .map((line) => lineText(line, { ...context, country: study.profile.place.country }, paint)),
    issuesText(study, context),
    wrap(speech.words.phrases['safety'] ?? '', WIDTH, ''),
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

function header({ profile }: Study, { view, reader }: PrintContext, paint: Paint): string {
  const { words } = reader.speech;
  const editions =
    profile.editions.map((id) => citedText(id, words.sources)).join(', ') || words.phrases['no-edition'];
  const rules = fill(words.phrases['rules-in-force'] ?? '', { date: profile.date, editions: editions ?? '' });
  const uncovered =
    profile.uncovered.length === 0
      ? ''
      : fill(words.phrases['uncovered'] ?? '', {
          subjects: profile.uncovered.map((one) => words.phrases[`code.${one}`] ?? one).join(', '),
        });
  const volumes = reader.system === 'si' ? '' : (words.phrases['standard-volume'] ?? '');
  const notes = [rules, uncovered, words.phrases['barriers'] ?? '', volumes]
    .filter((note) => note !== '')
    .join(' ');
  return [paint(siteText(view, reader), 'bold'), wrap(notes, WIDTH, '')].join('\n');
}

/** One row a line: the verdict of its worst finding, or that there is no check yet. */
function glance({ lines }: Study, speech: Speech, paint: Paint): string {
  const { words } = speech;
  const rows = lines.map((line) => {
    const name = words.lines[line.line] ?? line.line;
    if (!line.built) return [name, words.verdicts['not built'], ''];
    const [worst] = line.findings;
    if (worst === undefined || worst.verdict === 'does not apply')
      return [name, words.verdicts['does not apply'], ''];
    const verdict = `${words.verdicts[worst.verdict]} ${marginText(worst, speech)}`.trim();
    return [name, verdict, `${words.rules[worst.rule]?.title ?? worst.rule}${about(worst, speech)}`];
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

interface LineContext extends PrintContext {
  readonly country: string;
}

function lineText(line: LineStudy, context: LineContext, paint: Paint): string {
  const { words, locale } = context.reader.speech;
  const title = paint((words.lines[line.line] ?? line.line).toLocaleUpperCase(locale), 'bold');
  return [title, ...line.findings.map((finding) => findingText(finding, context, paint))].join('\n');
}

function findingText(finding: Finding, { reader, country }: LineContext, paint: Paint): string {
  const { speech } = reader;
  const { words } = speech;
  const verdict = words.verdicts[finding.verdict].padEnd(8);
  const margin = marginText(finding, speech).padStart(7);
  const title = `${words.rules[finding.rule]?.title ?? finding.rule}${about(finding, speech)}`;
  const first = `  ${paint(`${verdict}${margin}`, finding.verdict)}  ${title}`;
  if (finding.verdict === 'does not apply' && !saysWhyNot(finding)) return first;
  const details = [detail(finding, reader), citation(finding, speech)].filter((part) => part !== '');
  const id = paint(findingId(finding), 'dim');
  const duty = dutyText(finding, country, speech);
  return [
    first,
    ...(duty === '' ? [] : [paint(wrap(duty, WIDTH, INDENT), 'fails')]),
    wrap(details.join(' · '), WIDTH, INDENT),
    `${INDENT}${id}`,
  ].join('\n');
}

/** What is owed first, before the figures: what is dangerous is never the second thing a reader sees. */
function dutyText({ hazard, verdict }: Finding, country: string, speech: Speech): string {
  const { words } = speech;
  const duty = hazard === undefined || verdict !== 'fails' ? undefined : dutyOf(hazard, country);
  if (duty === undefined) return '';
  const { phrase, source } = duty;
  const book = source.known === 'from memory' ? ` [${words.phrases['check-the-book']}]` : '';
  return `${words.phrases[phrase] ?? phrase} (${sourceText(source, speech)})${book}`;
}

/** A rule that says why it does not apply says it in full. */
function saysWhyNot({ outcome }: Finding): boolean {
  return outcome?.sense === 'does-not-apply' && outcome.because !== undefined;
}

function detail(finding: Finding, reader: Reader): string {
  const { words } = reader.speech;
  const names = (paths: readonly string[]): string =>
    paths.map((path) => readingName(path, words)).join(', ');
  if (finding.verdict === 'unknown') {
    return fill(words.phrases['missing'] ?? '', { readings: names(finding.missing) });
  }
  const assumed =
    finding.assumed.length === 0
      ? ''
      : ` (${fill(words.phrases['assumes'] ?? '', { readings: names(finding.assumed) })})`;
  return `${outcomeText(finding, unitsOf(finding, reader))}${assumed}`;
}

function citation({ source, checkTheBook }: Finding, speech: Speech): string {
  const { words } = speech;
  const local =
    source.known === 'local amendment, as entered' ? ` [${words.phrases['local-amendment']}]` : '';
  const book = checkTheBook ? ` [${words.phrases['check-the-book']}]` : local;
  return sourceText(source, speech) + book;
}

function about({ subject }: Finding, { words }: Speech): string {
  const name = oneLine(subjectText(subject, words));
  return name === '' ? '' : ` · ${name}`;
}

function issuesText({ issues }: Study, { reader, file }: PrintContext): string {
  const { words, locale } = reader.speech;
  const lines = issues.map((issue) =>
    issueSentence(issue, {
      words,
      show: (value, kind) => figureText(value, kind, { ...reader, medium: 'water' }),
      name: (path) => readingName(path, words),
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
    (words.phrases['look-at'] ?? '').toLocaleUpperCase(locale),
    ...lines.map((line) => wrap(line, WIDTH, '  ')),
  ].join('\n');
}
