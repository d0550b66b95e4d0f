/**
 * Reads through a text once before it is parsed: is it JSON, how deep, with which member names, and where does each
 * entry of the log begin.
 *
 * It walks without recursion, so no nesting can exhaust the stack, and it knows the place of the first thing wrong,
 * which the platform's own parser does not say on every platform.
 *
 * Source of the grammar: RFC 8259 (ECMA-404).
 */
import { isForbiddenName } from '../log/json.ts';
import type { FileIssueCode } from './issue.ts';
import { type Lexed, lexNumber, lexString, lexWord, skipBlanks } from './lex.ts';

export interface ScanProblem {
  readonly code: FileIssueCode;
  readonly offset: number;
  readonly path: string;
  readonly found?: string;
  readonly expected?: number;
}

/** Where values begin, for telling the place of what is wrong with them. */
export interface Offsets {
  /** Of the members of the outermost object. */
  readonly members: ReadonlyMap<string, number>;
  /** Of the entries of the log. */
  readonly log: readonly number[];
}

export type Scan =
  | { readonly ok: true; readonly offsets: Offsets }
  | { readonly ok: false; readonly problem: ScanProblem };

interface Frame {
  /** Names so far of an object; absent for an array. */
  readonly names?: Set<string>;
  name: string;
  index: number;
}

type Expect = 'value' | 'value-or-end' | 'name' | 'name-or-end' | 'comma-or-end' | 'nothing';

interface State {
  readonly text: string;
  readonly maxDepth: number;
  readonly logName: string;
  readonly stack: Frame[];
  readonly offsets: { readonly members: Map<string, number>; readonly log: number[] };
  at: number;
  expect: Expect;
}

/** Scans `text`; `logName` is the member of the outermost object whose entries are located. */
export function scanJson(text: string, maxDepth: number, logName: string): Scan {
  const offsets = { members: new Map<string, number>(), log: [] };
  const state: State = { text, maxDepth, logName, stack: [], offsets, at: 0, expect: 'value' };
  for (;;) {
    state.at = skipBlanks(text, state.at);
    if (state.at >= text.length && state.expect === 'nothing') return { ok: true, offsets };
    const problem = state.at >= text.length ? wrong(state, 'truncated') : step(state);
    if (problem) return { ok: false, problem };
  }
}

function step(state: State): ScanProblem | undefined {
  const { text, at, expect } = state;
  const character = text[at]!;
  if (expect === 'nothing') return wrong(state, 'not-json');
  if (expect === 'comma-or-end') return stepAfterValue(state, character);
  const isObject = state.stack.at(-1)?.names !== undefined;
  if (expect === 'name-or-end' && character === '}') return leave(state);
  if (expect === 'value-or-end' && character === ']') return leave(state);
  return isObject && expect !== 'value' ? stepName(state) : stepValue(state, character);
}

function stepAfterValue(state: State, character: string): ScanProblem | undefined {
  const frame = state.stack.at(-1)!;
  if (character === (frame.names ? '}' : ']')) return leave(state);
  if (character !== ',') return wrong(state, 'not-json');
  state.at += 1;
  state.expect = frame.names ? 'name' : 'value';
  frame.index += 1;
  return undefined;
}

function stepName(state: State): ScanProblem | undefined {
  const frame = state.stack.at(-1)!;
  if (state.text[state.at] !== '"') return wrong(state, 'not-json');
  const start = state.at;
  const problem = advance(state, lexString(state.text, start));
  if (problem) return problem;
  const name = JSON.parse(state.text.slice(start, state.at)) as string;
  frame.name = name;
  if (isForbiddenName(name)) return { ...wrong(state, 'forbidden-key', start), found: name };
  if (frame.names!.has(name)) return { ...wrong(state, 'repeated-key', start), found: name };
  frame.names!.add(name);
  state.at = skipBlanks(state.text, state.at);
  if (state.at >= state.text.length) return wrong(state, 'truncated');
  if (state.text[state.at] !== ':') return wrong(state, 'not-json');
  state.at += 1;
  state.expect = 'value';
  return undefined;
}

function stepValue(state: State, character: string): ScanProblem | undefined {
  noteOffset(state);
  if (character === '{' || character === '[') return enter(state, character);
  const problem = advance(state, lexScalar(state.text, state.at));
  if (!problem) state.expect = state.stack.length > 0 ? 'comma-or-end' : 'nothing';
  return problem;
}

function lexScalar(text: string, at: number): Lexed {
  const character = text[at]!;
  if (character === '"') return lexString(text, at);
  if (character === '-' || (character >= '0' && character <= '9')) return lexNumber(text, at);
  return lexWord(text, at);
}

function enter(state: State, bracket: string): ScanProblem | undefined {
  if (state.stack.length >= state.maxDepth) return { ...wrong(state, 'too-deep'), expected: state.maxDepth };
  const isObject = bracket === '{';
  state.stack.push(isObject ? { names: new Set(), name: '', index: 0 } : { name: '', index: 0 });
  state.at += 1;
  state.expect = isObject ? 'name-or-end' : 'value-or-end';
  return undefined;
}

function leave(state: State): undefined {
  state.stack.pop();
  state.at += 1;
  state.expect = state.stack.length > 0 ? 'comma-or-end' : 'nothing';
}

function advance(state: State, lexed: Lexed): ScanProblem | undefined {
  if (!lexed.ok) return wrong(state, lexed.at >= state.text.length ? 'truncated' : 'not-json', lexed.at);
  state.at = lexed.end;
  return undefined;
}

function noteOffset({ stack, logName, offsets, at }: State): void {
  const [file, list] = stack;
  if (stack.length > 2 || !file?.names) return;
  if (!list) offsets.members.set(file.name, at);
  else if (!list.names && file.name === logName) offsets.log.push(at);
}

function wrong(state: State, code: FileIssueCode, offset = state.at): ScanProblem {
  return { code, offset, path: pathOf(state.stack) };
}

/** The way to the innermost open object or array; very long ways are cut. */
function pathOf(stack: readonly Frame[]): string {
  const steps = stack
    .slice(0, 8)
    .map((frame) => (frame.names ? `.${frame.name.slice(0, 80)}` : `[${frame.index}]`));
  return steps.join('').replace(/^\./, '') + (stack.length > 8 ? '…' : '');
}
