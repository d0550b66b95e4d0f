/**
 * JSON values, and the one text each of them is written as.
 *
 * Two devices must agree on whether two operations are the same and on what a fingerprint is taken of, so the
 * canonical text follows RFC 8785 (JSON Canonicalization Scheme): members sorted by UTF-16 code units, no blanks,
 * numbers and strings as ECMAScript prints them. It differs in one point: RFC 8785 forbids a lone surrogate, here it
 * is written as an escape, because the text of a person's note must never stop a job from being saved.
 */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export interface JsonObject {
  readonly [member: string]: Json;
}

/** Deepest nesting of one value; a reading needs two or three. */
export const MAX_JSON_DEPTH = 32;

/** Member names that reach into the prototype of an object when copied carelessly. */
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

export function isForbiddenName(name: string): boolean {
  return FORBIDDEN.has(name);
}

export function isJsonObject(value: unknown): value is { readonly [member: string]: unknown } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Canonical text (RFC 8785). The value must be JSON: see `jsonProblem`. */
export function canonicalJson(value: Json): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  const members = Object.keys(value)
    .sort()
    .map((name) => `${JSON.stringify(name)}:${canonicalJson(value[name] as Json)}`);
  return `{${members.join(',')}}`;
}

export function sameJson(a: Json, b: Json): boolean {
  return a === b || canonicalJson(a) === canonicalJson(b);
}

export type JsonProblemCode = 'not-json' | 'not-finite' | 'too-deep' | 'forbidden-key';

export interface JsonProblem {
  readonly code: JsonProblemCode;
  /** Where inside the value, such as `.curve[2].head`. */
  readonly path: string;
}

/** Why a value is not JSON that a log may hold; undefined when it is. Never throws, cyclic objects included. */
export function jsonProblem(value: unknown, path = '', depth = 0): JsonProblem | undefined {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return undefined;
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : { code: 'not-finite', path };
  if (typeof value !== 'object') return { code: 'not-json', path };
  if (depth >= MAX_JSON_DEPTH) return { code: 'too-deep', path };
  return Array.isArray(value) ? itemProblem(value, path, depth) : memberProblem(value, path, depth);
}

function itemProblem(items: readonly unknown[], path: string, depth: number): JsonProblem | undefined {
  for (let i = 0; i < items.length; i++) {
    const problem = jsonProblem(items[i], '', depth + 1);
    if (problem) return { code: problem.code, path: `${path}[${i}]${problem.path}` };
  }
  return undefined;
}

function memberProblem(object: object, path: string, depth: number): JsonProblem | undefined {
  const prototype: unknown = Object.getPrototypeOf(object);
  if (prototype !== null && Object.getPrototypeOf(prototype) !== null) return { code: 'not-json', path };
  const members = object as { readonly [name: string]: unknown };
  for (const name of Object.keys(members)) {
    if (FORBIDDEN.has(name)) return { code: 'forbidden-key', path: `${path}.${name}` };
    const problem = jsonProblem(members[name], '', depth + 1);
    if (problem) return { code: problem.code, path: `${path}.${name}${problem.path}` };
  }
  return undefined;
}

/** `Array.isArray` that keeps a read-only array's element type. */
function isArray(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
