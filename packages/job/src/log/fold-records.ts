/** The fold of the records that only grow: each entry after those it names, branches and gaps as findings. */
import { compareOperations } from './compare.ts';
import type { RecordEntry } from './document.ts';
import type { Entry } from './element-operations.ts';
import type { LogFinding } from './findings.ts';
import { formatTarget } from './names.ts';
import type { RecordValue } from './record-value.ts';

export interface RecordsFold {
  readonly records: ReadonlyMap<string, readonly RecordEntry[]>;
  readonly findings: readonly LogFinding[];
}

/** Folds the entries that are applied, in any order. */
export function foldRecords(entries: readonly Entry[]): RecordsFold {
  const byName = new Map<string, RecordEntry[]>();
  const sorted = [...entries].sort((a, b) => compareOperations(a.operation, b.operation));
  for (const entry of sorted) {
    const { element: name } = entry.target;
    const record = byName.get(name) ?? [];
    byName.set(name, record);
    record.push(recordEntry(entry));
  }
  const records = new Map<string, readonly RecordEntry[]>();
  const findings: LogFinding[] = [];
  for (const name of [...byName.keys()].sort()) {
    const record = inOrder(byName.get(name)!);
    records.set(name, record);
    for (const finding of recordFindings(name, record)) findings.push(finding);
  }
  return { records, findings };
}

/** Entries that no other entry names: what the next one has to name. One, unless devices went on apart. */
export function recordTips(record: readonly RecordEntry[]): RecordEntry[] {
  const named = new Set(record.flatMap((entry) => entry.previous));
  return record.filter((entry) => !named.has(entry.fingerprint));
}

function recordEntry(entry: Entry): RecordEntry {
  const { id, hlc, author, value } = entry.operation;
  return { ...(value as unknown as RecordValue), id, hlc, author };
}

/** Each entry after those it names; where that leaves a choice, in the order given. */
function inOrder(record: readonly RecordEntry[]): RecordEntry[] {
  const byFingerprint = new Map(record.map((entry) => [entry.fingerprint, entry]));
  const ordered = new Set<RecordEntry>();
  const entered = new Set<RecordEntry>();
  for (const start of record) {
    const path = [start];
    for (let entry = path.at(-1); entry; entry = path.at(-1)) {
      const before = entered.has(entry) ? [] : entry.previous.map((name) => byFingerprint.get(name));
      entered.add(entry);
      const open = before.filter((other) => other !== undefined && !entered.has(other)) as RecordEntry[];
      if (open.length > 0) for (const other of open.reverse()) path.push(other);
      else ordered.add(path.pop()!);
    }
  }
  return [...ordered];
}

function recordFindings(name: string, record: readonly RecordEntry[]): LogFinding[] {
  const where = formatTarget({ collection: 'records', element: name });
  const findings: LogFinding[] = [];
  const borne = new Set(record.map((entry) => entry.fingerprint));
  for (const entry of record) {
    if (entry.previous.every((fingerprint) => borne.has(fingerprint))) continue;
    findings.push({ code: 'record-gap', where, ids: [entry.id] });
  }
  const tips = recordTips(record).map((entry) => entry.id);
  if (tips.length > 1) findings.push({ code: 'record-forked', where, ids: tips });
  return findings;
}
