/** One job file checked again, as a row of a table; whatever the file holds, there is a row. */
import { crowdOf, jobViewOf, MOST_RECORDS, readJobFile, type Study, study } from '@firstfire/job';
import { type Finding, findingId, LINES } from '@firstfire/reference';

/** Columns of the table, in order. */
export const COLUMNS: readonly string[] = [
  'file',
  'job',
  ...LINES.flatMap((line) => [line, `${line} margin`, `${line} finding`]),
  'fails',
  'unknown',
  'issue',
];

export interface RowOptions {
  readonly today: string;
  readonly edition?: string;
}

/** The row of a file's text. Judged by the guards alone: a list of thousands is for looking, a check for deciding. */
export function rowOf(file: string, text: string, options: RowOptions): readonly string[] {
  const read = readJobFile(text);
  if (!read.ok)
    return issueRow(
      file,
      read.issues.map(({ code, place }) => `${code} at ${place.line}:${place.column}`).join('; '),
    );
  const crowd = crowdOf(read.value.document);
  if (crowd !== undefined)
    return issueRow(file, `${crowd.count} ${crowd.collection}: more than ${MOST_RECORDS}`);
  const view = jobViewOf(read.value.document);
  const name = view.record('job', '-').reading('name')?.value;
  const found = study(view, { ...options, uncertainty: false });
  const findings = found.lines.flatMap((line) => line.findings);
  return [
    file,
    typeof name === 'string' ? name : '',
    ...found.lines.flatMap(lineCells),
    String(count(findings, 'fails')),
    String(count(findings, 'unknown')),
    found.issues.map((issue) => `${issue.where}: ${issue.code}`).join('; '),
  ];
}

export function issueRow(file: string, issue: string): readonly string[] {
  return [file, ...COLUMNS.slice(1, -1).map(() => ''), issue];
}

function lineCells({ built, findings }: Study['lines'][number]): readonly string[] {
  if (!built) return ['not built', '', ''];
  const [worst] = findings;
  if (worst === undefined) return ['does not apply', '', ''];
  const margin = worst.margin === undefined ? '' : worst.margin.toFixed(3);
  return [worst.verdict, margin, findingId(worst)];
}

function count(findings: readonly Finding[], verdict: Finding['verdict']): number {
  return findings.filter((finding) => finding.verdict === verdict).length;
}
