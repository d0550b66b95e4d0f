/** A written survey as plain records of readings, ready for a log. */
import type { Issue, Result } from '@firstfire/engine';
import type { Field, Reading } from './field.ts';
import { HOW_KNOWN } from './field.ts';
import type { RecordSpec } from './record.ts';
import { RECORD_BY_COLLECTION } from './records.ts';
import { readingFromText, type SurveyDefaults } from './survey-text.ts';

type Plain = Readonly<Record<string, unknown>>;

/** What `operationsFromSurvey` takes: objects for single records, arrays for the others. */
export type SurveyRecords = Readonly<Record<string, unknown>>;

/** Every text of a survey read by its field; what cannot be read is named with its place, all of it at once. */
export function surveyRecords(survey: unknown): Result<SurveyRecords> {
  if (!isPlain(survey)) return { ok: false, issues: [issue('', 'survey-object-expected')] };
  const defaults = isPlain(survey['defaults']) ? (survey['defaults'] as SurveyDefaults) : {};
  const issues: Issue[] = [];
  const records: Record<string, unknown> = {};
  for (const [name, part] of Object.entries(survey)) {
    if (name === 'defaults') continue;
    const spec = RECORD_BY_COLLECTION.get(name);
    if (spec === undefined) {
      issues.push({ ...issue(name, 'unknown-record'), expected: [...RECORD_BY_COLLECTION.keys()] });
      continue;
    }
    const context = { spec, defaults, issues };
    if (spec.single && isPlain(part)) records[name] = readRecord(part, name, context);
    else if (!spec.single && Array.isArray(part)) {
      records[name] = part.map((one: unknown, index) => readElement(one, `${name}[${index}]`, context));
    } else issues.push(issue(name, spec.single ? 'object-expected' : 'list-expected'));
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: records };
}

interface Context {
  readonly spec: RecordSpec;
  readonly defaults: SurveyDefaults;
  readonly issues: Issue[];
}

function readElement(part: unknown, path: string, context: Context): Plain {
  if (!isPlain(part)) {
    context.issues.push(issue(path, 'object-expected'));
    return {};
  }
  const { id, ...fields } = part;
  return { ...(id === undefined ? {} : { id }), ...readRecord(fields, path, context) };
}

function readRecord(part: Plain, path: string, { spec, defaults, issues }: Context): Plain {
  const fields: Record<string, Reading> = {};
  for (const [name, given] of Object.entries(part)) {
    const field = Object.hasOwn(spec.fields, name) ? spec.fields[name] : undefined;
    if (field === undefined) {
      issues.push({ ...issue(`${path}.${name}`, 'unknown-field'), expected: Object.keys(spec.fields) });
      continue;
    }
    const read = readField(meantField(field, part), given, defaults);
    if (read.ok) fields[name] = read.value;
    else issues.push(...read.issues.map((one) => ({ ...one, where: `${path}.${name}` })));
  }
  return fields;
}

/** What a variant puts in the place of a reading is read as that reading. */
function meantField(field: Field, part: Plain): Field {
  if (field.type !== 'substitute') return field;
  const [collection = '', , name = ''] = String(part['target']).split('/');
  const fields = RECORD_BY_COLLECTION.get(collection)?.fields;
  return fields !== undefined && Object.hasOwn(fields, name) ? (fields[name] ?? field) : field;
}

/** A text is parsed; a reading written out passes; counts stand for themselves. */
function readField(field: Field, given: unknown, defaults: SurveyDefaults): Result<Reading> {
  if (typeof given === 'string') return readingFromText(field, given, defaults);
  if (isPlain(given) && (HOW_KNOWN as readonly unknown[]).includes(given['how']) && 'value' in given) {
    return { ok: true, value: { ...defaults, ...(given as unknown as Reading) } };
  }
  if (field.type === 'counts' && isPlain(given)) {
    return { ok: true, value: { value: given as Record<string, number>, how: 'measured', ...defaults } };
  }
  return { ok: false, issues: [issue('', 'reading-expected')] };
}

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function issue(where: string, reason: string): Issue {
  return { code: 'ill-formed', where, reason };
}
