/** Which operations a log holds, told briefly: for each replica the runs of seq it has. */
import type { StoredOperation } from './envelope.ts';
import { parseOperationId } from './names.ts';

/** From, to, both included. */
export type SeqRun = readonly [number, number];

/** Replica → runs in order, with a gap between any two. */
export type VersionVector = ReadonlyMap<string, readonly SeqRun[]>;

export function versionVector(operations: Iterable<StoredOperation>): VersionVector {
  const seqs = new Map<string, number[]>();
  for (const { id } of operations) {
    const parsed = parseOperationId(id);
    if (!parsed) continue;
    const list = seqs.get(parsed.replica);
    if (list) list.push(parsed.seq);
    else seqs.set(parsed.replica, [parsed.seq]);
  }
  const replicas = [...seqs.keys()].sort();
  return new Map(replicas.map((replica) => [replica, runsOf(seqs.get(replica)!)]));
}

/** The operations of a log that the holder of `vector` lacks. */
export function missingFrom(vector: VersionVector, operations: Iterable<StoredOperation>): StoredOperation[] {
  return [...operations].filter(({ id }) => !vectorHolds(vector, id));
}

export function vectorHolds(vector: VersionVector, id: string): boolean {
  const parsed = parseOperationId(id);
  const runs = parsed && vector.get(parsed.replica);
  if (!runs) return false;
  let low = 0;
  let high = runs.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (runs[middle]![0] <= parsed.seq) low = middle;
    else high = middle - 1;
  }
  const run = runs[low];
  return run !== undefined && parsed.seq >= run[0] && parsed.seq <= run[1];
}

/** One text for one vector, such as `van-1:1-40,42 van-2:1-7`. */
export function vectorText(vector: VersionVector): string {
  const replicas = [...vector.keys()].sort();
  return replicas.map((replica) => `${replica}:${vector.get(replica)!.map(runText).join(',')}`).join(' ');
}

function runText([from, to]: SeqRun): string {
  return from === to ? String(from) : `${from}-${to}`;
}

function runsOf(seqs: number[]): SeqRun[] {
  const runs: [number, number][] = [];
  for (const seq of seqs.sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && seq <= last[1] + 1) last[1] = seq;
    else runs.push([seq, seq]);
  }
  return runs;
}
