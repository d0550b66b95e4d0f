/** What one person at one device can take back and bring back: a stack of own groups. Pure data, kept by the screen. */
import type { Operation } from './envelope.ts';
import type { Folding } from './fold.ts';
import type { Writer } from './pen.ts';
import { undoGroup } from './undo.ts';
import type { WriteIssue } from './writer.ts';

export interface History {
  /** Groups that undo would take back, the latest last. */
  readonly done: readonly string[];
  /** Undoings that redo would take back, the latest last. */
  readonly undone: readonly string[];
}

export const EMPTY_HISTORY: History = { done: [], undone: [] };

export type HistoryResult =
  | { readonly ok: true; readonly operations: readonly Operation[]; readonly history: History }
  | { readonly ok: false; readonly issues: readonly WriteIssue[] };

/** After a group was written; what had been undone cannot be redone any more. */
export function recorded(history: History, operations: readonly Operation[]): History {
  const group = operations[0]?.group;
  return group === undefined ? history : { done: [...history.done, group], undone: [] };
}

/** Takes the last own group back. Nothing to undo: no operations. */
export function undo(folding: Folding, history: History, writer: Writer): HistoryResult {
  const group = history.done.at(-1);
  if (group === undefined) return { ok: true, operations: [], history };
  const result = undoGroup(folding, group, writer);
  if (!result.ok) return result;
  const undone = [...history.undone, ...groupsOf(result.operations)];
  return { ...result, history: { done: history.done.slice(0, -1), undone } };
}

/** Brings the last undone group back. Nothing to redo: no operations. */
export function redo(folding: Folding, history: History, writer: Writer): HistoryResult {
  const group = history.undone.at(-1);
  if (group === undefined) return { ok: true, operations: [], history };
  const result = undoGroup(folding, group, writer);
  if (!result.ok) return result;
  const done = [...history.done, ...groupsOf(result.operations)];
  return { ...result, history: { done, undone: history.undone.slice(0, -1) } };
}

function groupsOf(operations: readonly Operation[]): string[] {
  return operations.slice(0, 1).map((operation) => operation.group);
}
