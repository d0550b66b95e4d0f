/**
 * The names a log is written with: operation ids, group ids and targets, each a string with one grammar.
 *
 *     operation id   replica ':' seq              van-2:17
 *     group          first id '+' count           van-2:15+3   (the operations van-2:15, :16 and :17)
 *     target         collection '/' element [ '/' field ]      pipes/p4/length    site/-/altitude
 *
 * A group names its size and place, so that anybody can see whether all of it is there.
 */
import { isForbiddenName } from './json.ts';

export interface OperationId {
  readonly replica: string;
  readonly seq: number;
}

export interface Group {
  readonly replica: string;
  readonly first: number;
  readonly count: number;
}

export interface Target {
  readonly collection: string;
  readonly element: string;
  /** Absent for the element as a whole. */
  readonly field?: string;
}

/** The only element of a collection that is a single thing, such as the site. */
export const SINGLETON = '-';
/** Collection of the append-only records; no element lives there. */
export const RECORDS = 'records';

const REPLICA = /^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/;
const NAME = /^[A-Za-z][A-Za-z0-9_.-]{0,63}$/;
const ELEMENT = /^[A-Za-z0-9][A-Za-z0-9_.~-]{0,63}$/;
const SEQ = /^[1-9][0-9]{0,15}$/;

export function isReplica(text: string): boolean {
  return REPLICA.test(text);
}

/** A document's id: the grammar of an element's. */
export function isDocumentId(text: string): boolean {
  return ELEMENT.test(text) && !isForbiddenName(text);
}

export function isElementId(text: string): boolean {
  return text === SINGLETON || (ELEMENT.test(text) && !isForbiddenName(text));
}

/** A collection's or a field's name. */
export function isName(text: string): boolean {
  return NAME.test(text) && !isForbiddenName(text);
}

export function operationId(replica: string, seq: number): string {
  return `${replica}:${seq}`;
}

export function parseOperationId(text: string): OperationId | undefined {
  const colon = text.indexOf(':');
  const replica = text.slice(0, Math.max(colon, 0));
  const seq = parseSeq(text.slice(colon + 1));
  return seq !== undefined && REPLICA.test(replica) ? { replica, seq } : undefined;
}

/** Replica by code units, then seq as a number. */
export function compareOperationIds(a: string, b: string): number {
  if (a === b) return 0;
  const x = parseOperationId(a);
  const y = parseOperationId(b);
  if (!x || !y) return a < b ? -1 : 1;
  if (x.replica !== y.replica) return x.replica < y.replica ? -1 : 1;
  return x.seq - y.seq;
}

export function groupId(replica: string, first: number, count: number): string {
  return `${replica}:${first}+${count}`;
}

export function parseGroup(text: string): Group | undefined {
  const plus = text.indexOf('+');
  const first = parseOperationId(text.slice(0, Math.max(plus, 0)));
  const count = parseSeq(text.slice(plus + 1));
  if (!first || count === undefined) return undefined;
  return { replica: first.replica, first: first.seq, count };
}

export function groupHolds(group: Group, id: OperationId): boolean {
  return group.replica === id.replica && id.seq >= group.first && id.seq < group.first + group.count;
}

export function formatTarget(target: Target): string {
  const element = `${target.collection}/${target.element}`;
  return target.field === undefined ? element : `${element}/${target.field}`;
}

export function parseTarget(text: string): Target | undefined {
  const parts = text.split('/');
  const [collection, element, field] = parts;
  if (collection === undefined || element === undefined || parts.length > 3) return undefined;
  if (!isName(collection) || !isElementId(element)) return undefined;
  if (field === undefined) return { collection, element };
  return isFieldOf(element, field) ? { collection, element, field } : undefined;
}

/** `id` is how an element's own id is written in a document, so no field of an element may bear the name. */
export function isFieldOf(element: string, field: string): boolean {
  return isName(field) && (field !== 'id' || element === SINGLETON);
}

function parseSeq(text: string): number | undefined {
  if (!SEQ.test(text)) return undefined;
  const seq = Number(text);
  return Number.isSafeInteger(seq) ? seq : undefined;
}
