/**
 * A snapshot: a document put by so that it need not be folded again. It is a cache and nothing more: keyed by what the
 * log held and by the version of the fold, and thrown away whenever anything about it is in doubt.
 */
import type { Digest } from '../ports/digest.ts';
import {
  type Element,
  type Field,
  FOLD_VERSION,
  type FoldedDocument,
  type ReplicaProgress,
} from './document.ts';
import type { LogFindingCode } from './findings.ts';
import { canonicalJson, isJsonObject, type Json, jsonProblem } from './json.ts';

export interface Snapshot {
  readonly key: string;
  readonly body: string;
  readonly fingerprint: string;
}

/** After these the progress of the replicas does not say for certain which operations were folded. */
const DOUBTS: readonly LogFindingCode[] = ['conflicting-duplicate', 'bad-operation', 'other-document'];

/**
 * The key of a log that holds every operation of each replica up to its last; undefined where some are missing, for
 * then two different logs could have one key.
 */
export function snapshotKey(
  doc: string,
  replicas: ReadonlyMap<string, Pick<ReplicaProgress, 'last' | 'count'>>,
): string | undefined {
  const parts = [`fold ${FOLD_VERSION}`, doc];
  for (const replica of [...replicas.keys()].sort()) {
    const { last, count } = replicas.get(replica)!;
    if (last !== count) return undefined;
    parts.push(`${replica}:${last}`);
  }
  return parts.join(' ');
}

/** Undefined where the document is in doubt. */
export function takeSnapshot(document: FoldedDocument, digest: Digest): Snapshot | undefined {
  const key = snapshotKey(document.doc, document.replicas);
  const inDoubt = document.findings.some((finding) => DOUBTS.includes(finding.code));
  if (key === undefined || inDoubt) return undefined;
  const body = canonicalJson(packDocument(document));
  return { key, body, fingerprint: digest.fingerprint(`${key}\n${body}`) };
}

/** The document, if the snapshot is whole and of exactly this key; else it has to be folded. */
export function openSnapshot(
  snapshot: unknown,
  key: string | undefined,
  digest: Digest,
): FoldedDocument | undefined {
  if (key === undefined || !isJsonObject(snapshot) || jsonProblem(snapshot)) return undefined;
  const { key: made, body, fingerprint } = snapshot;
  if (made !== key || typeof body !== 'string') return undefined;
  return digest.fingerprint(`${key}\n${body}`) === fingerprint
    ? unpack(JSON.parse(body) as Packed)
    : undefined;
}

/** A document with its maps as lists of pairs. */
type PackedElement = Omit<Element, 'fields'> & { readonly fields: readonly (readonly [string, Field])[] };
type Packed = Omit<FoldedDocument, 'collections' | 'records' | 'replicas'> & {
  readonly collections: readonly (readonly [string, readonly PackedElement[]])[];
  readonly records: readonly [
    string,
    FoldedDocument['records'] extends ReadonlyMap<string, infer R> ? R : never,
  ][];
  readonly replicas: readonly [string, ReplicaProgress][];
};

/** The document as JSON, its maps as lists of pairs in order: two documents are the same when these texts are. */
export function packDocument(document: FoldedDocument): Json {
  const collections = [...document.collections].map(([name, elements]) => [
    name,
    [...elements.values()].map((element) => ({ ...element, fields: [...element.fields] })),
  ]);
  const packed = {
    ...document,
    collections,
    records: [...document.records],
    replicas: [...document.replicas],
  };
  return packed as unknown as Json;
}

function unpack({ collections, records, replicas, ...rest }: Packed): FoldedDocument {
  const unpacked = collections.map(([name, elements]): [string, ReadonlyMap<string, Element>] => [
    name,
    new Map(elements.map((element) => [element.id, { ...element, fields: new Map(element.fields) }])),
  ]);
  return { ...rest, collections: new Map(unpacked), records: new Map(records), replicas: new Map(replicas) };
}
