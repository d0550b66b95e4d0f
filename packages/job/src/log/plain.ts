/** A document as plain nested data, for a file's reader and for everything that only wants the values. */
import { type Element, elementsOf, type FoldedDocument } from './document.ts';
import type { Json, JsonObject } from './json.ts';
import { RECORDS, SINGLETON } from './names.ts';

/**
 * The living part of a document: singletons as objects, collections as arrays in order, each element with its `id`.
 * Fields taken back and singletons left without a field do not appear.
 */
export function toSurvey(document: FoldedDocument): JsonObject {
  const survey: { [collection: string]: Json } = {};
  for (const collection of [...document.collections.keys()].sort()) {
    const plain = plainCollection(elementsOf(document, collection));
    if (plain !== undefined) survey[collection] = plain;
  }
  return survey;
}

/** The same with the records that only grow: the `document` of a job file. */
export function documentView(document: FoldedDocument): JsonObject {
  if (document.records.size === 0) return toSurvey(document);
  const records: { [name: string]: Json } = {};
  for (const name of [...document.records.keys()].sort()) {
    records[name] = (document.records.get(name) ?? []).map((entry) => ({ ...entry }));
  }
  return { ...toSurvey(document), [RECORDS]: records };
}

function plainCollection(elements: readonly Element[]): Json | undefined {
  const [first] = elements;
  if (!first) return undefined;
  if (first.id !== SINGLETON || elements.length > 1) {
    return elements.map((element) => ({ id: element.id, ...plainFields(element) }));
  }
  const fields = plainFields(first);
  return Object.keys(fields).length > 0 ? fields : undefined;
}

function plainFields(element: Element): JsonObject {
  const fields: { [field: string]: Json } = {};
  for (const name of [...element.fields.keys()].sort()) {
    const field = element.fields.get(name);
    if (field && field.value !== null) fields[name] = field.value;
  }
  return fields;
}
