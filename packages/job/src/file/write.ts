/**
 * Writing a job file: one text for one set of operations, whatever their order. Laid out to be read and compared by
 * line: a value a line in `document`, an operation a line in `log`.
 */
import type { StoredOperation } from '../log/envelope.ts';
import { fold } from '../log/fold.ts';
import { canonicalJson, isJsonObject, type Json, type JsonObject } from '../log/json.ts';
import { RECORDS } from '../log/names.ts';
import { documentView } from '../log/plain.ts';
import { unite } from '../log/union.ts';
import { FILE_FORMAT, FILE_VERSION, LOG_MEMBER } from './format.ts';
import { operationLine } from './lines.ts';

export function writeJobFile(operations: Iterable<StoredOperation>): string {
  const log = unite(operations);
  const document = layOutDocument(documentView(fold(log)));
  const lines = log.map((operation) => `\n    ${operationLine(operation)}`).join(',');
  const list = lines ? `[${lines}\n  ]` : '[]';
  return [
    '{',
    `  "format": ${JSON.stringify(FILE_FORMAT)},`,
    `  "version": ${FILE_VERSION},`,
    `  "document": ${document},`,
    `  "${LOG_MEMBER}": ${list}`,
    '}\n',
  ].join('\n');
}

/** A line for each value: fields stand one level deeper in a collection, and entries in a record, than in a singleton. */
function layOutDocument(view: JsonObject): string {
  const lines = Object.keys(view)
    .sort()
    .map((name) => {
      const part = view[name]!;
      const levels = Array.isArray(part) || name === RECORDS ? 2 : 1;
      return `\n    ${JSON.stringify(name)}: ${layOut(part, levels, '    ')}`;
    });
  return lines.length > 0 ? `{${lines.join(',')}\n  }` : '{}';
}

/** JSON with `levels` levels opened over lines and everything deeper on one. */
function layOut(value: Json, levels: number, indent: string): string {
  if (levels === 0 || typeof value !== 'object' || value === null) return canonicalJson(value);
  const inner = `${indent}  `;
  const lines = Array.isArray(value)
    ? value.map((item: Json) => inner + layOut(item, levels - 1, inner))
    : memberLines(value as JsonObject, levels, inner);
  const [open, close] = isJsonObject(value) ? ['{', '}'] : ['[', ']'];
  return lines.length === 0 ? open + close : `${open}\n${lines.join(',\n')}\n${indent}${close}`;
}

function memberLines(object: JsonObject, levels: number, inner: string): string[] {
  const names = Object.keys(object).sort(idFirst);
  return names.map((name) => `${inner}${JSON.stringify(name)}: ${layOut(object[name]!, levels - 1, inner)}`);
}

function idFirst(a: string, b: string): number {
  if (a === 'id' || b === 'id') return a === b ? 0 : a === 'id' ? -1 : 1;
  return a < b ? -1 : a > b ? 1 : 0;
}
