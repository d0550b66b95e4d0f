/** Why a job file cannot be read, or what was noticed in reading it: codes with their place in the file. */
export const FILE_ISSUE_CODES = [
  /** Longer than a job file may be. */
  'too-large',
  /** Not JSON from this place on. */
  'not-json',
  /** JSON that stops in the middle: the rest of the file is missing. */
  'truncated',
  /** Nested deeper than any job. */
  'too-deep',
  /** A member name that reaches into the program's own objects, such as `__proto__`. */
  'forbidden-key',
  /** A member named twice in one object, of which programs would read different ones. */
  'repeated-key',
  /** JSON, but nothing that says it is a job. */
  'foreign-json',
  /** Says it is something else. */
  'wrong-format',
  /** Its version is no version. */
  'wrong-version',
  /** Written by a newer program: it is left as it is. */
  'newer-version',
  /** The log is missing or no list. */
  'no-log',
  /** The list of jobs of a file of many is missing or no list. */
  'no-jobs',
] as const;

export type FileIssueCode = (typeof FILE_ISSUE_CODES)[number];

export const FILE_FINDING_CODES = [
  /** An entry of the log that is no operation: refused alone. */
  'bad-operation',
  /** An operation that stands in the log twice. */
  'repeated-operation',
  /** No `document`: it is made from the log. */
  'document-missing',
  /** `document` is not what the log gives: the log holds. */
  'document-differs',
  /** A member the format does not have. */
  'unknown-member',
] as const;

export type FileFindingCode = (typeof FILE_FINDING_CODES)[number];

export interface Place {
  /** From 1. */
  readonly line: number;
  /** From 1, in characters (UTF-16 units). */
  readonly column: number;
  /** Such as `log[12].hlc`; empty for the file as a whole. */
  readonly path: string;
}

export interface FileIssue {
  readonly code: FileIssueCode;
  readonly place: Place;
  readonly found?: string | number;
  /** What would have been right, or the greatest value allowed. */
  readonly expected?: string | number;
}

export interface FileFinding {
  readonly code: FileFindingCode;
  readonly place: Place;
  /** A finer reason, itself a code. */
  readonly reason?: string;
  /** Id of the operation concerned, as far as it could be read. */
  readonly id?: string;
}

/** Tells line and column of characters of one text; finds the lines once, when first asked. */
export class Places {
  readonly #text: string;
  #starts: number[] | undefined;

  constructor(text: string) {
    this.#text = text;
  }

  at(offset: number, path: string): Place {
    this.#starts ??= lineStarts(this.#text);
    let low = 0;
    let high = this.#starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.#starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - this.#starts[low]! + 1, path };
  }
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}
