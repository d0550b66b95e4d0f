/**
 * A log as plain lines, one operation each, as they stand in a job file: a text that can be added to at its end, and of
 * which a torn or damaged line costs that line alone.
 */
import { inspectOperation } from '../log/check-operation.ts';
import { ENVELOPE_MEMBERS, type StoredOperation } from '../log/envelope.ts';
import { canonicalJson, type Json, type JsonObject } from '../log/json.ts';
import { unite } from '../log/union.ts';

export interface OperationLines {
  /** In canonical order, each once. */
  readonly operations: readonly StoredOperation[];
  /** How many lines hold no operation. */
  readonly damaged: number;
}

/** One operation on one line: the envelope in its order, anything a newer version added behind it. */
export function operationLine(operation: StoredOperation): string {
  const raw = operation as unknown as JsonObject;
  const known: readonly string[] = ENVELOPE_MEMBERS;
  const others = Object.keys(raw).filter((name) => !known.includes(name));
  const names = [...known.filter((name) => raw[name] !== undefined), ...others.sort()];
  return `{${names.map((name) => `${JSON.stringify(name)}:${canonicalJson(raw[name] as Json)}`).join(',')}}`;
}

/** The operations as lines, each ended, so that more can follow. */
export function writeOperationLines(operations: Iterable<StoredOperation>): string {
  return [...operations].map((operation) => `${operationLine(operation)}\n`).join('');
}

/** What the lines hold; a line that is no operation is left out and counted. Empty lines are nothing. */
export function readOperationLines(text: string): OperationLines {
  const operations: StoredOperation[] = [];
  let damaged = 0;
  for (const line of text.split('\n')) {
    if (line.trim() === '') continue;
    const operation = operationIn(line);
    if (operation === undefined) damaged += 1;
    else operations.push(operation);
  }
  return { operations: unite(operations), damaged };
}

function operationIn(line: string): StoredOperation | undefined {
  try {
    const found = inspectOperation(JSON.parse(line));
    return found.state === 'bad' ? undefined : found.stored;
  } catch {
    return undefined;
  }
}
