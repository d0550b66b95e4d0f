/**
 * A log made from plain nested data: a survey typed into a file, a form, an example.
 *
 *     { site: { altitude: '5400 ft' }, pipes: [{ id: 'p1', length: { value: 20, unit: 'ft', how: 'measured' } }] }
 *
 * Arrays become collections whose order is the array's; objects become singletons. It knows no schema: what a field
 * may hold is judged by the study. Each value is a group of its own, so damage to one operation costs one value.
 */
import type { Operation } from './envelope.ts';
import { isJsonObject, type Json, jsonProblem } from './json.ts';
import { formatTarget, isElementId, isFieldOf, isName, RECORDS, SINGLETON } from './names.ts';
import { orderKeys } from './order-key.ts';
import { type Draft, FRESH_PEN, inkGroup, type Writer } from './pen.ts';

export const SURVEY_ISSUE_CODES = [
  /** Neither an object (a single thing) nor an array of objects (a collection). */
  'not-a-collection',
  /** A collection, element id or field whose name the log cannot hold. */
  'bad-name',
  /** Two elements of a collection with one id. */
  'repeated-id',
  /** A value that is not JSON. */
  'not-json',
] as const;

export interface SurveyIssue {
  readonly code: (typeof SURVEY_ISSUE_CODES)[number];
  /** Such as `pipes[3].length`. */
  readonly path: string;
}

export type SurveyResult =
  | { readonly ok: true; readonly operations: readonly Operation[] }
  | { readonly ok: false; readonly issues: readonly SurveyIssue[] };

interface Intake {
  readonly drafts: Draft[];
  readonly issues: SurveyIssue[];
}

/** The operations that create the document and put the whole survey into it. An element without `id` is given one. */
export function operationsFromSurvey(survey: unknown, writer: Writer): SurveyResult {
  const drafts: Draft[] = [{ kind: 'job.create', target: `job/${SINGLETON}`, value: null, replaces: [] }];
  const intake: Intake = { drafts, issues: [] };
  if (!isJsonObject(survey)) return { ok: false, issues: [{ code: 'not-a-collection', path: '' }] };
  for (const [name, part] of Object.entries(survey)) {
    if (part === null || part === undefined) continue;
    readCollection(name, part, intake);
  }
  if (intake.issues.length > 0) return { ok: false, issues: intake.issues };
  return { ok: true, operations: inkEach(drafts, writer) };
}

function inkEach(drafts: readonly Draft[], writer: Writer): Operation[] {
  const operations: Operation[] = [];
  let pen = writer.pen ?? FRESH_PEN;
  for (const draft of drafts) {
    const inked = inkGroup([draft], pen, writer);
    operations.push(...inked.operations);
    pen = inked.pen;
  }
  return operations;
}

function readCollection(name: string, part: unknown, intake: Intake): void {
  const { issues } = intake;
  if (!isName(name) || name === RECORDS) issues.push({ code: 'bad-name', path: name });
  else if (isJsonObject(part)) readFields({ collection: name, element: SINGLETON, path: name }, part, intake);
  else if (Array.isArray(part)) readElements(name, part, intake);
  else issues.push({ code: 'not-a-collection', path: name });
}

function readElements(collection: string, items: readonly unknown[], intake: Intake): void {
  const orders = orderKeys(items.length);
  const given = new Set(items.map((item) => (isJsonObject(item) ? item['id'] : undefined)));
  const used = new Set<string>();
  items.forEach((item, index) => {
    const path = `${collection}[${index}]`;
    if (!isJsonObject(item)) {
      intake.issues.push({ code: 'not-a-collection', path });
      return;
    }
    const { id = freeId(collection, index, given), ...fields } = item;
    if (!isFreeId(id, used)) {
      const code = used.has(id as string) ? 'repeated-id' : 'bad-name';
      intake.issues.push({ code, path: `${path}.id` });
      return;
    }
    used.add(id);
    const target = formatTarget({ collection, element: id });
    intake.drafts.push({ kind: 'element.add', target, value: { order: orders[index]! }, replaces: [] });
    readFields({ collection, element: id, path }, fields, intake);
  });
}

function isFreeId(id: unknown, used: ReadonlySet<string>): id is string {
  return typeof id === 'string' && id !== SINGLETON && isElementId(id) && !used.has(id);
}

/** An id for an element that brought none: its collection and place, unless another bears it. */
function freeId(collection: string, index: number, given: ReadonlySet<unknown>): string {
  let id = `${collection}-${index + 1}`;
  while (given.has(id)) id += 'x';
  return id;
}

interface Place {
  readonly collection: string;
  readonly element: string;
  readonly path: string;
}

function readFields(place: Place, fields: { readonly [name: string]: unknown }, intake: Intake): void {
  const { collection, element, path } = place;
  for (const [field, value] of Object.entries(fields)) {
    if (value === null || value === undefined) continue;
    const here = `${path}.${field}`;
    const problem = jsonProblem(value, here);
    if (!isFieldOf(element, field)) intake.issues.push({ code: 'bad-name', path: here });
    else if (problem) intake.issues.push({ code: 'not-json', path: problem.path });
    else {
      const target = formatTarget({ collection, element, field });
      intake.drafts.push({ kind: 'field.set', target, value: value as Json, replaces: [] });
    }
  }
}
