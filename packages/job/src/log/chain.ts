/**
 * Records that only grow: start-up and service. Each entry names the fingerprint of the one before, the program version
 * and the code edition, so that an entry altered, dropped or slipped in afterwards shows.
 *
 * The fingerprint is taken of the entry with everything that says whose and when it is, in canonical JSON. It proves
 * that nothing was altered, not who wrote it: that takes a signature.
 */

import type { Digest } from '../ports/digest.ts';
import type { FoldedDocument, RecordEntry } from './document.ts';
import { type LogFinding, sortFindings } from './findings.ts';
import { recordTips } from './fold-records.ts';
import { canonicalJson, type Json, jsonProblem } from './json.ts';
import { isElementId, RECORDS, SINGLETON } from './names.ts';
import { inkGroup, penOf, type Writer } from './pen.ts';
import type { RecordValue } from './record-value.ts';
import { refuse, type WriteResult, writerIssue } from './writer.ts';

export interface NewEntry {
  /** Name of the record, such as `startup`. */
  readonly record: string;
  readonly entry: Json;
  /** Version of the program that writes it. */
  readonly program: string;
  /** Code edition in force for it. */
  readonly edition: string;
}

/** An entry at the end of a record, naming the last one; where devices went on apart, the last of each branch. */
export function appendRecord(
  document: FoldedDocument,
  { record, entry, program, edition }: NewEntry,
  { digest, ...writer }: Writer & { readonly digest: Digest },
): WriteResult {
  const target = `${RECORDS}/${record}`;
  const issue = writerIssue(document, writer);
  if (issue) return refuse(issue);
  if (!isElementId(record) || record === SINGLETON) return refuse({ code: 'bad-name', where: target });
  if (jsonProblem(entry) || !program || !edition) return refuse({ code: 'not-json', where: target });
  const previous = recordTips(document.records.get(record) ?? []).map((tip) => tip.fingerprint);
  const content = { previous, program, edition, entry };
  const draft = { kind: 'record.append', target, value: null, replaces: [] } as const;
  const operations = inkGroup([draft], penOf(document, writer), writer).operations.map((operation) => {
    const { doc, id, hlc, author } = operation;
    const fingerprint = digest.fingerprint(sealedText({ doc, id, hlc, author, target, ...content }));
    const value: Json = { ...content, fingerprint };
    return { ...operation, value };
  });
  return { ok: true, operations };
}

/** Findings of every entry whose fingerprint is not that of its content. Gaps and branches the fold finds itself. */
export function verifyRecords(document: FoldedDocument, digest: Digest): LogFinding[] {
  const findings: LogFinding[] = [];
  for (const [name, entries] of document.records) {
    const where = `${RECORDS}/${name}`;
    for (const entry of entries) {
      if (digest.fingerprint(sealedText(sealed(document.doc, where, entry))) === entry.fingerprint) continue;
      findings.push({ code: 'record-altered', where, ids: [entry.id] });
    }
  }
  return sortFindings(findings);
}

type Sealed = Omit<RecordValue, 'fingerprint'> & {
  readonly doc: string;
  readonly id: string;
  readonly hlc: string;
  readonly author: string;
  readonly target: string;
};

function sealed(doc: string, target: string, { fingerprint: _, ...rest }: RecordEntry): Sealed {
  return { ...rest, doc, target };
}

function sealedText(content: Sealed): string {
  return canonicalJson({ ...content });
}
