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
  /** All groups in the order they were written. Whatever follows the next one to undo or redo has been cancelled. */
  readonly written: readonly string[];
}

export const EMPTY_HISTORY: History = { done: [], undone: [], written: [] };

export type HistoryResult =
  | { readonly ok: true; readonly operations: readonly Operation[]; readonly history: History }
  | { readonly ok: false; readonly issues: readonly WriteIssue[] };

/** After a group was written; what had been undone cannot be redone any more. */
export function recorded(history: History, operations: readonly Operation[]): History {
  const group = operations[0]?.group;
  if (group === undefined) return history;
  return { done: [...history.done, group], undone: [], written: [...history.written, group] };
}

/** Takes the last own group back. Nothing to undo: no operations. */
export function undo(folding: Folding, history: History, writer: Writer): HistoryResult {
  return step(folding, { history, from: 'done', to: 'undone' }, writer);
}

/** Brings the last undone group back. Nothing to redo: no operations. */
export function redo(folding: Folding, history: History, writer: Writer): HistoryResult {
  return step(folding, { history, from: 'undone', to: 'done' }, writer);
}

interface Step {
  readonly history: History;
  readonly from: 'done' | 'undone';
  readonly to: 'done' | 'undone';
}

function step(folding: Folding, { history, from, to }: Step, writer: Writer): HistoryResult {
  const group = history[from].at(-1);
  if (group === undefined) return { ok: true, operations: [], history };
  const cancelled = history.written.slice(history.written.indexOf(group) + 1);
  const result = undoGroup(folding, { group, cancelled }, writer);
  if (!result.ok) return result;
  const back = result.operations[0]?.group;
  const written = back === undefined ? history.written : [...history.written, back];
  // A group that changed nothing is its own undoing: the step counts, though nothing is written.
  const moved = { [from]: history[from].slice(0, -1), [to]: [...history[to], back ?? group] };
  return { ok: true, operations: result.operations, history: { ...history, ...moved, written } };
}
