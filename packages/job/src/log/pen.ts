/** Turns drafts into operations of one group: ids, clock and group are filled in here and nowhere else. */
import type { FoldedDocument } from './document.ts';
import { OPERATION_VERSION, type Operation, type OperationKind } from './envelope.ts';
import { HLC_ZERO, receiveHlc, tickHlc } from './hlc.ts';
import type { Json } from './json.ts';
import { groupId, operationId } from './names.ts';

/** Who writes, on which device, and when. */
export interface Writer {
  readonly doc: string;
  /** One installation of the program on one device; never shared, renewed when in doubt. */
  readonly replica: string;
  readonly author: string;
  /** Wall time, ms since 1970. */
  readonly now: number;
  /** Where the store says this replica's writing stands, read in the transaction that stores the operations. */
  readonly pen?: PenState;
}

/** Where this replica's writing stands: the last seq it used and its clock. */
export interface PenState {
  readonly seq: number;
  readonly hlc: string;
}

export interface Draft {
  readonly kind: OperationKind;
  readonly target: string;
  readonly value: Json;
  readonly replaces: readonly string[];
}

export const FRESH_PEN: PenState = { seq: 0, hlc: HLC_ZERO };

/**
 * The pen of a replica that has seen this document. Its own clock never goes back; a foreign one advances it unless
 * it runs more than five minutes ahead of wall time.
 */
export function penOf(document: FoldedDocument, writer: Writer): PenState {
  const own = document.replicas.get(writer.replica);
  const { seq, hlc } = writer.pen ?? FRESH_PEN;
  let clock = own && own.hlc > hlc ? own.hlc : hlc;
  for (const progress of document.replicas.values()) clock = receiveHlc(clock, progress.hlc, writer.now);
  return { seq: Math.max(seq, own?.last ?? 0), hlc: clock };
}

/** The id that the draft at `index` of the next group will get. */
export function nextId(pen: PenState, writer: Writer, index: number): string {
  return operationId(writer.replica, pen.seq + 1 + index);
}

/** One group of operations, and the pen after it. */
export function inkGroup(
  drafts: readonly Draft[],
  pen: PenState,
  writer: Writer,
): { readonly operations: Operation[]; readonly pen: PenState } {
  const group = groupId(writer.replica, pen.seq + 1, drafts.length);
  let { seq, hlc } = pen;
  const operations = drafts.map((draft): Operation => {
    seq += 1;
    hlc = tickHlc(hlc, writer.now);
    return {
      v: OPERATION_VERSION,
      doc: writer.doc,
      id: operationId(writer.replica, seq),
      hlc,
      author: writer.author,
      kind: draft.kind,
      target: draft.target,
      value: draft.value,
      replaces: [...draft.replaces],
      group,
    };
  });
  return { operations, pen: { seq, hlc } };
}
