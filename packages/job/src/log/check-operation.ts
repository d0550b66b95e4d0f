/**
 * The door of the log: whether something read from a file, a store or a peer is an operation, and what it says.
 *
 * Everything that folds, unites or writes operations passes here first, so a bad one is refused alone, with the member
 * that is wrong. An operation of a newer version is sound as soon as its version and id are.
 */
import {
  ENVELOPE_MEMBERS,
  isKnownKind,
  OPERATION_VERSION,
  type Operation,
  type StoredOperation,
} from './envelope.ts';
import { isHlc } from './hlc.ts';
import { isJsonObject, type JsonProblemCode, jsonProblem } from './json.ts';
import { upcast } from './migrations.ts';
import {
  type Group,
  groupHolds,
  isDocumentId,
  type OperationId,
  parseGroup,
  parseOperationId,
  parseTarget,
  RECORDS,
  SINGLETON,
  type Target,
} from './names.ts';
import { isOrderKey } from './order-key.ts';
import { isRecordValue } from './record-value.ts';

export type OperationProblemCode =
  | JsonProblemCode
  | 'not-an-object'
  | 'missing-member'
  | 'unknown-member'
  | 'wrong-type'
  | 'wrong-form';

export interface OperationProblem {
  readonly code: OperationProblemCode;
  /** The member that is wrong, such as `hlc` or `value.curve[2]`; empty for the operation itself. */
  readonly path: string;
}

/** What an operation turned out to be. */
export type Inspected =
  | { readonly state: 'bad'; readonly problem: OperationProblem }
  /** Of a newer version: kept and passed on, unapplied. */
  | { readonly state: 'newer'; readonly stored: StoredOperation; readonly id: OperationId }
  /** Of a kind this version does not know: kept and passed on, unapplied. */
  | ({ readonly state: 'unknown' } & Parsed)
  | ({ readonly state: 'known'; readonly target: Target } & Parsed);

interface Parsed {
  /** As it lies in the log. */
  readonly stored: StoredOperation;
  /** The same in today's envelope. */
  readonly operation: Operation;
  readonly id: OperationId;
  readonly group: Group;
}

const MAX_TEXT = 200;
const TEXT_MEMBERS = ['doc', 'hlc', 'author', 'kind', 'target', 'group'] as const;
/** Operations are immutable, so an object is inspected once however often it is folded. */
const inspected = new WeakMap<object, Inspected>();

export function inspectOperation(raw: unknown): Inspected {
  if (!isJsonObject(raw)) return bad('not-an-object', '');
  let result = inspected.get(raw);
  if (!result) {
    result = inspect(raw);
    inspected.set(raw, result);
  }
  return result;
}

function bad(code: OperationProblemCode, path: string): Inspected {
  return { state: 'bad', problem: { code, path } };
}

type Raw = { readonly [member: string]: unknown };

function inspect(raw: Raw): Inspected {
  const { v, id } = raw;
  if (v === undefined) return bad('missing-member', 'v');
  if (typeof v !== 'number' || !Number.isInteger(v) || v < 0) return bad('wrong-type', 'v');
  if (id === undefined) return bad('missing-member', 'id');
  const parsed = typeof id === 'string' ? parseOperationId(id) : undefined;
  if (!parsed) return bad(typeof id === 'string' ? 'wrong-form' : 'wrong-type', 'id');
  const stored = raw as unknown as StoredOperation;
  if (v <= OPERATION_VERSION) return inspectCurrent(stored, upcast(raw, v), parsed);
  const problem = jsonProblem(raw);
  if (problem) return bad(problem.code, problem.path.replace(/^\./, ''));
  return { state: 'newer', stored, id: parsed };
}

function inspectCurrent(stored: StoredOperation, raw: Raw, id: OperationId): Inspected {
  const problem = envelopeProblem(raw);
  if (problem) return { state: 'bad', problem };
  const operation = raw as unknown as Operation;
  const group = groupOf(operation, id);
  if (!group) return bad('wrong-form', 'group');
  if (!isKnownKind(operation.kind)) return { state: 'unknown', stored, operation, id, group };
  const target = targetOf(operation);
  if (!target) return bad('wrong-form', 'target');
  if (!isValueOf(operation)) return bad('wrong-form', 'value');
  return { state: 'known', stored, operation, id, group, target };
}

function groupOf(operation: Operation, id: OperationId): Group | undefined {
  if (operation.group === `${operation.id}+1`) return { replica: id.replica, first: id.seq, count: 1 };
  const group = parseGroup(operation.group);
  return group && groupHolds(group, id) ? group : undefined;
}

function envelopeProblem(raw: Raw): OperationProblem | undefined {
  for (const member of ENVELOPE_MEMBERS) {
    if (raw[member] === undefined) return { code: 'missing-member', path: member };
  }
  const names = Object.keys(raw);
  if (names.length !== ENVELOPE_MEMBERS.length) {
    const extra = names.find((name) => !(ENVELOPE_MEMBERS as readonly string[]).includes(name));
    return { code: 'unknown-member', path: extra ?? '' };
  }
  for (const member of TEXT_MEMBERS) {
    if (typeof raw[member] !== 'string') return { code: 'wrong-type', path: member };
  }
  const value = jsonProblem(raw['value'], 'value');
  return value ?? formProblem(raw as unknown as Operation) ?? replacesProblem(raw['replaces']);
}

function formProblem(operation: Operation): OperationProblem | undefined {
  const wrong = (path: string): OperationProblem => ({ code: 'wrong-form', path });
  if (!isDocumentId(operation.doc)) return wrong('doc');
  if (!isHlc(operation.hlc)) return wrong('hlc');
  if (!isShortText(operation.author)) return wrong('author');
  if (!isShortText(operation.kind)) return wrong('kind');
  return undefined;
}

function isShortText(text: string): boolean {
  return text.length > 0 && text.length <= MAX_TEXT;
}

function replacesProblem(replaces: unknown): OperationProblem | undefined {
  if (!Array.isArray(replaces)) return { code: 'wrong-type', path: 'replaces' };
  for (let i = 0; i < replaces.length; i++) {
    const id: unknown = replaces[i];
    if (typeof id !== 'string') return { code: 'wrong-type', path: `replaces[${i}]` };
    if (!parseOperationId(id)) return { code: 'wrong-form', path: `replaces[${i}]` };
  }
  return undefined;
}

/** The parsed target, if it is one this kind may have. */
function targetOf(operation: Operation): Target | undefined {
  const target = parseTarget(operation.target);
  if (!target) return undefined;
  const { kind } = operation;
  if (kind === 'record.append') return isRecordTarget(target) ? target : undefined;
  if (target.collection === RECORDS) return undefined;
  if (kind === 'job.create') return operation.target === `job/${SINGLETON}` ? target : undefined;
  const fits =
    kind === 'field.set'
      ? target.field !== undefined
      : target.field === undefined && target.element !== SINGLETON;
  return fits ? target : undefined;
}

function isRecordTarget(target: Target): boolean {
  return target.collection === RECORDS && target.element !== SINGLETON && target.field === undefined;
}

function isValueOf(operation: Operation): boolean {
  const { kind, value } = operation;
  if (kind === 'element.remove') return value === null;
  if (kind === 'record.append') return isRecordValue(value);
  if (kind !== 'element.add' && kind !== 'element.move') return true;
  if (!isJsonObject(value)) return false;
  const order = value['order'];
  return Object.keys(value).length === 1 && typeof order === 'string' && isOrderKey(order);
}
