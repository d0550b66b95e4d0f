/**
 * Reading a job file. Any text gives an answer: the job, or a coded issue with its place.
 *
 * The log is what counts. An entry that is no operation is refused alone and the rest goes on; `document` is a view
 * for other readers and is only compared.
 */
import { type Inspected, inspectOperation } from '../log/check-operation.ts';
import type { FoldedDocument } from '../log/document.ts';
import type { StoredOperation } from '../log/envelope.ts';
import { fold } from '../log/fold.ts';
import { isJsonObject, type Json, jsonProblem, sameJson } from '../log/json.ts';
import { OperationSet } from '../log/operation-set.ts';
import { documentView } from '../log/plain.ts';
import { unite } from '../log/union.ts';
import { FILE_FORMAT, FILE_VERSION, LOG_MEMBER, MAX_FILE_DEPTH, MAX_FILE_LENGTH } from './format.ts';
import { type FileFinding, type FileFindingCode, type FileIssue, type Place, Places } from './issue.ts';
import { type Offsets, scanJson } from './scan.ts';

export interface JobFile {
  /** In canonical order, each once. */
  readonly operations: readonly StoredOperation[];
  readonly document: FoldedDocument;
  /** What was noticed in the file; what the fold noticed stands in `document.findings`. */
  readonly findings: readonly FileFinding[];
}

export type JobFileResult =
  | { readonly ok: true; readonly value: JobFile }
  | { readonly ok: false; readonly issues: readonly FileIssue[] };

type Raw = { readonly [member: string]: unknown };

const MEMBERS = ['format', 'version', 'document', LOG_MEMBER];

export function readJobFile(content: string, maxLength = MAX_FILE_LENGTH): JobFileResult {
  const text = content.startsWith('\uFEFF') ? content.slice(1) : content;
  if (text.length > maxLength) {
    const place = { line: 1, column: 1, path: '' };
    return refuse({ code: 'too-large', place, found: text.length, expected: maxLength });
  }
  const scan = scanJson(text, MAX_FILE_DEPTH, LOG_MEMBER);
  if (!scan.ok) {
    const { code, offset, path, ...detail } = scan.problem;
    return refuse({ code, place: new Places(text).at(offset, path), ...detail });
  }
  const raw: unknown = JSON.parse(text);
  const places = new MemberPlaces(text, scan.offsets);
  const issue = headerIssue(raw, places);
  return issue ? refuse(issue) : { ok: true, value: readContent(raw as Raw, places) };
}

function refuse(issue: FileIssue): JobFileResult {
  return { ok: false, issues: [issue] };
}

function headerIssue(raw: unknown, places: MemberPlaces): FileIssue | undefined {
  const place = (path: string) => places.ofMember(path);
  if (!isJsonObject(raw) || raw['format'] === undefined) {
    return { code: 'foreign-json', place: place(''), expected: FILE_FORMAT };
  }
  const { format, version } = raw;
  if (format !== FILE_FORMAT) {
    return { code: 'wrong-format', place: place('format'), found: shown(format), expected: FILE_FORMAT };
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { code: 'wrong-version', place: place('version'), found: shown(version), expected: FILE_VERSION };
  }
  if (version > FILE_VERSION) {
    return { code: 'newer-version', place: place('version'), found: version, expected: FILE_VERSION };
  }
  return Array.isArray(raw[LOG_MEMBER]) ? undefined : { code: 'no-log', place: place(LOG_MEMBER) };
}

function shown(value: unknown): string | number {
  return typeof value === 'number' ? value : String(JSON.stringify(value) ?? 'nothing').slice(0, 80);
}

/** Knows where the members of the file and the entries of its log begin. */
class MemberPlaces {
  readonly #places: Places;
  readonly #offsets: Offsets;

  constructor(text: string, offsets: Offsets) {
    this.#places = new Places(text);
    this.#offsets = offsets;
  }

  /** Of a member that is missing: the beginning of the file. */
  ofMember(name: string): Place {
    return this.#places.at(this.#offsets.members.get(name) ?? 0, name.slice(0, 80));
  }

  ofEntry(index: number, member: string): Place {
    const path = member ? `${LOG_MEMBER}[${index}].${member}` : `${LOG_MEMBER}[${index}]`;
    return this.#places.at(this.#offsets.log[index] ?? 0, path);
  }
}

function readContent(raw: Raw, places: MemberPlaces): JobFile {
  const findings: FileFinding[] = unknownMembers(raw, places);
  const operations = readLog(raw[LOG_MEMBER] as readonly unknown[], { places, findings });
  const document = fold(operations);
  const code = documentCode(raw['document'], document);
  if (code) findings.push({ code, place: places.ofMember('document') });
  return { operations, document, findings };
}

function unknownMembers(raw: Raw, places: MemberPlaces): FileFinding[] {
  const unknown = Object.keys(raw).filter((name) => !MEMBERS.includes(name));
  return unknown.map((name) => ({ code: 'unknown-member', place: places.ofMember(name) }));
}

interface LogReading {
  readonly places: MemberPlaces;
  readonly findings: FileFinding[];
}

function readLog(entries: readonly unknown[], { places, findings }: LogReading): StoredOperation[] {
  const operations = new OperationSet();
  entries.forEach((entry, index) => {
    const found = inspectOperation(entry);
    if (found.state === 'bad') {
      findings.push(badOperation(entry, found, places.ofEntry(index, found.problem.path)));
      return;
    }
    const { id } = found.stored;
    if (operations.add(found.stored) !== 'repeated') return;
    findings.push({ code: 'repeated-operation', place: places.ofEntry(index, ''), id });
  });
  return unite(operations.all());
}

type Bad = Extract<Inspected, { state: 'bad' }>;

function badOperation(entry: unknown, { problem }: Bad, place: FileFinding['place']): FileFinding {
  const id: unknown = isJsonObject(entry) ? entry['id'] : undefined;
  const known = typeof id === 'string' ? { id: id.slice(0, 80) } : {};
  return { code: 'bad-operation', place, reason: problem.code, ...known };
}

/** What is to be said of `document`: the log holds, whatever it says. */
function documentCode(written: unknown, document: FoldedDocument): FileFindingCode | undefined {
  if (written === undefined) return 'document-missing';
  const same = !jsonProblem(written) && sameJson(written as Json, documentView(document));
  return same ? undefined : 'document-differs';
}
