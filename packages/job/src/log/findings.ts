/** What a fold noticed: data, never an exception. The wording belongs to `words`. */
export const LOG_FINDING_CODES = [
  /** Not an operation: refused alone. */
  'bad-operation',
  /** Of a newer version: kept and passed on, unapplied. */
  'newer-operation',
  /** Of a kind this version does not know: kept and passed on, unapplied. */
  'unknown-kind',
  /** Belongs to another document: kept, unapplied. */
  'other-document',
  /** One id with two contents: both are kept; its writer needs a new replica id. */
  'conflicting-duplicate',
  /** Part of a group is missing: what is there waits for the rest. */
  'incomplete-group',
  /** Part of a group is of a kind or version not known here: the whole group waits. */
  'group-not-understood',
  /** `replaces` names an operation that is not in the log. */
  'dangling-replaces',
  /** `replaces` names an operation on something else; the name counts for nothing. */
  'replaces-elsewhere',
  /** Operations that each claim to have seen the other; inside the cycle `replaces` counts for nothing. */
  'cycle-in-replaces',
  /** Several values written without sight of each other: the later is shown, the others stay visible. */
  'concurrent-values',
  /** Edited while somebody else deleted it: the element lives, the deletion is shown as a conflict. */
  'edit-against-delete',
  /** A field or place of an element that nothing ever added. */
  'never-added',
  /** More than one operation creates the document. */
  'created-twice',
  /** A record goes on from one entry in two ways. */
  'record-forked',
  /** A record entry names a fingerprint that no entry bears. */
  'record-gap',
  /** A record entry's fingerprint is not that of its content. */
  'record-altered',
] as const;

export type LogFindingCode = (typeof LOG_FINDING_CODES)[number];

export interface LogFinding {
  readonly code: LogFindingCode;
  /** The target it is about, or the member of the operation; empty when it is about operations alone. */
  readonly where: string;
  /** The operations concerned, in order. */
  readonly ids: readonly string[];
  /** A finer reason, itself a code. */
  readonly reason?: string;
}

/** One order for a list of findings, each finding once. */
export function sortFindings(findings: readonly LogFinding[]): LogFinding[] {
  const keyed = new Map(findings.map((finding) => [findingKey(finding), finding]));
  return [...keyed].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, finding]) => finding);
}

function findingKey({ code, where, ids, reason }: LogFinding): string {
  return JSON.stringify([code, where, ids, reason ?? '']);
}
