/** The document: the view that folding a log gives. */
import type { LogFinding } from './findings.ts';
import type { Json } from './json.ts';
import { SINGLETON } from './names.ts';
import type { RecordValue } from './record-value.ts';

/** The version of the folding rules; a snapshot made under another is thrown away. */
export const FOLD_VERSION = 1;

export interface FoldedDocument {
  readonly doc: string;
  readonly created?: Created;
  /** Collection → element id → element, removed ones included. */
  readonly collections: ReadonlyMap<string, ReadonlyMap<string, Element>>;
  /** Record name → entries, each after those it names. */
  readonly records: ReadonlyMap<string, readonly RecordEntry[]>;
  /** Who has written, and how far. */
  readonly replicas: ReadonlyMap<string, ReplicaProgress>;
  readonly findings: readonly LogFinding[];
}

export interface Created {
  readonly id: string;
  readonly hlc: string;
  readonly author: string;
  readonly value: Json;
}

export interface Element {
  readonly collection: string;
  readonly id: string;
  /** False for a tombstone. */
  readonly alive: boolean;
  /** Fractional order; empty when nothing ever gave one. */
  readonly order: string;
  /** The operations that give the order: one, or several written without sight of each other. */
  readonly orderHeads: readonly string[];
  readonly fields: ReadonlyMap<string, Field>;
  /** All operations on the element that no other operation on it replaces: what a removal has to name. */
  readonly heads: readonly string[];
  /** Removals that nobody has answered yet. On a living element they are a conflict. */
  readonly removals: readonly string[];
}

export interface Field {
  /** The winning value; null when it was taken back. */
  readonly value: Json;
  /** The operation that wins. */
  readonly id: string;
  readonly hlc: string;
  readonly author: string;
  /** All heads, the winner first. */
  readonly heads: readonly string[];
  /** Values of the other heads where they differ: written without sight of the winner. */
  readonly others: readonly SecondValue[];
}

export interface SecondValue {
  readonly value: Json;
  readonly id: string;
  readonly hlc: string;
  readonly author: string;
}

export interface RecordEntry extends RecordValue {
  readonly id: string;
  readonly hlc: string;
  readonly author: string;
}

export interface ReplicaProgress {
  /** Highest seq seen. */
  readonly last: number;
  /** How many different seqs were seen; less than `last` where some are missing. */
  readonly count: number;
  /** Latest clock seen. */
  readonly hlc: string;
}

/** An element, removed or not. */
export function elementOf(document: FoldedDocument, collection: string, id: string): Element | undefined {
  return document.collections.get(collection)?.get(id);
}

/** The living elements of a collection in their order. */
export function elementsOf(document: FoldedDocument, collection: string): Element[] {
  const elements = [...(document.collections.get(collection)?.values() ?? [])];
  return elements.filter((element) => element.alive).sort(compareElements);
}

/** Order of siblings: by fractional order, then by id. */
export function compareElements(a: Element, b: Element): number {
  if (a.order !== b.order) return a.order < b.order ? -1 : 1;
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

/** A field of a living element. */
export function fieldOf(
  document: FoldedDocument,
  at: { readonly collection: string; readonly element?: string; readonly field: string },
): Field | undefined {
  const element = elementOf(document, at.collection, at.element ?? SINGLETON);
  return element?.alive ? element.fields.get(at.field) : undefined;
}
