/** A reading turned into SI, or what is wrong with it. The first place where a stored value meets its meaning. */
import { type Issue, quantity } from '@firstfire/engine';
import {
  type CountsField,
  type CurveField,
  type Field,
  type QuantityField,
  RECORD_BY_COLLECTION,
  type Reading,
} from '../../schema/index.ts';
import { usualPlusMinus } from './usual-plus-minus.ts';

export type FieldFact =
  | {
      readonly state: 'number';
      readonly value: number;
      readonly kind: quantity.Kind;
      readonly plusMinus: number;
      readonly assumed: boolean;
    }
  | { readonly state: 'word'; readonly value: string; readonly assumed: boolean }
  | { readonly state: 'curve'; readonly value: readonly (readonly [number, number])[] }
  | { readonly state: 'counts'; readonly value: Readonly<Record<string, number>> }
  | { readonly state: 'unknown' }
  | { readonly state: 'wrong'; readonly issues: readonly Issue[] };

const UNKNOWN: FieldFact = { state: 'unknown' };

/** Readings never change once written, so what one means is worked out once. */
const remembered = new WeakMap<Reading, { readonly spec: Field; readonly fact: FieldFact }>();

export function fieldFact(collection: string, field: string, reading: Reading | undefined): FieldFact {
  if (reading === undefined) return UNKNOWN;
  const spec = RECORD_BY_COLLECTION.get(collection)?.fields[field];
  if (spec === undefined) return UNKNOWN;
  const known = remembered.get(reading);
  if (known !== undefined && known.spec === spec) return known.fact;
  const fact = meaning(spec, reading);
  remembered.set(reading, { spec, fact });
  return fact;
}

function meaning(field: Field, reading: Reading): FieldFact {
  switch (field.type) {
    case 'quantity':
      return quantityMeaning(field, reading);
    case 'curve':
      return curveMeaning(field, reading);
    case 'counts':
      return countsMeaning(field, reading);
    case 'choice':
      return field.choices.includes(String(reading.value))
        ? word(reading)
        : wrong({ code: 'not-understood', where: '', found: shown(reading), expected: field.choices });
    case 'substitute':
      return UNKNOWN;
    default:
      return typeof reading.value === 'string' && reading.value !== ''
        ? word(reading)
        : wrong({ code: 'not-understood', where: '', found: shown(reading), reason: 'text-expected' });
  }
}

function word(reading: Reading): FieldFact {
  return { state: 'word', value: String(reading.value), assumed: reading.how === 'assumed' };
}

function quantityMeaning(field: QuantityField, reading: Reading): FieldFact {
  const { kind, min, max } = field;
  if (typeof reading.value !== 'number') {
    return wrong({
      code: 'not-understood',
      where: '',
      found: shown(reading),
      kind,
      reason: 'number-expected',
    });
  }
  const si = quantity.valueInSi(reading.value, unitOf(reading), kind);
  if (!si.ok) return { state: 'wrong', issues: si.issues };
  const value = si.value;
  if (!Number.isFinite(value)) return wrong({ code: 'not-finite', where: '', found: String(value), kind });
  if ((min !== undefined && value < min) || (max !== undefined && value > max)) {
    const range = { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
    return wrong({ code: 'out-of-range', where: '', found: value, kind, ...range });
  }
  const given = reading.pm === undefined ? undefined : halfWidth(reading, reading.pm, kind);
  if (given !== undefined && !(given >= 0)) return wrong(spreadIssue(given, kind));
  const plusMinus = given ?? (field.decided ? 0 : usualPlusMinus(reading.how, kind, value));
  return { state: 'number', value, kind, plusMinus, assumed: reading.how === 'assumed' };
}

/** A ± in the unit of its value; the difference of two values, so that an offset scale comes out right. */
function halfWidth(reading: Reading, pm: number, kind: quantity.Kind): number {
  if (typeof reading.value !== 'number' || typeof pm !== 'number' || !Number.isFinite(pm)) return Number.NaN;
  const unit = unitOf(reading);
  const above = quantity.valueInSi(reading.value + Math.abs(pm), unit, kind);
  const at = quantity.valueInSi(reading.value, unit, kind);
  return above.ok && at.ok ? Math.sign(pm) * Math.abs(above.value - at.value) : Number.NaN;
}

function spreadIssue(given: number, kind: quantity.Kind): Issue {
  const difference = kind === 'temperature' ? 'temperature-difference' : kind;
  if (Number.isNaN(given)) return { code: 'ill-formed', where: '', reason: 'plus-minus-unclear' };
  return {
    code: 'out-of-range',
    where: '',
    found: given,
    min: 0,
    kind: difference,
    reason: 'plus-minus-below-zero',
  };
}

function curveMeaning(field: CurveField, reading: Reading): FieldFact {
  if (!Array.isArray(reading.value)) {
    return wrong({ code: 'not-understood', where: '', found: shown(reading), reason: 'points-expected' });
  }
  const [unitX = '', unitY = ''] = unitOf(reading).split(', ');
  const points: [number, number][] = [];
  for (const pair of reading.value as readonly unknown[]) {
    if (!isPair(pair))
      return wrong({ code: 'not-understood', where: '', found: shown(reading), reason: 'points-expected' });
    const x = quantity.valueInSi(pair[0], unitX, field.x);
    const y = quantity.valueInSi(pair[1], unitY, field.y);
    if (!x.ok) return { state: 'wrong', issues: x.issues };
    if (!y.ok) return { state: 'wrong', issues: y.issues };
    points.push([x.value, y.value]);
  }
  const issue = trendIssue(field, points);
  return issue === undefined ? { state: 'curve', value: points } : wrong(issue);
}

function isPair(value: unknown): value is readonly [number, number] {
  return Array.isArray(value) && value.length === 2 && value.every((one) => typeof one === 'number');
}

/** A pump whose head rises with flow, or a loss that falls, is a slip of the pen or an unstable machine. */
function trendIssue(field: CurveField, points: readonly (readonly [number, number])[]): Issue | undefined {
  if (field.x === 'length') return undefined;
  if (points.length < 2) return { code: 'ill-formed', where: '', reason: 'too-few-points' };
  const down = field.trend === 'falls';
  for (let i = 1; i < points.length; i += 1) {
    const [x0, y0] = points[i - 1]!;
    const [x1, y1] = points[i]!;
    if (!(x1 > x0)) return { code: 'contradiction', where: '', reason: 'points-not-in-order' };
    if (down ? y1 > y0 : y1 < y0) {
      return { code: 'contradiction', where: '', reason: down ? 'curve-rises' : 'curve-falls' };
    }
  }
  return undefined;
}

function countsMeaning(field: CountsField, reading: Reading): FieldFact {
  const given = reading.value;
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    return wrong({ code: 'not-understood', where: '', found: shown(reading), expected: field.of });
  }
  for (const [name, count] of Object.entries(given)) {
    if (!field.of.includes(name)) {
      return wrong({ code: 'not-understood', where: '', found: name, expected: field.of });
    }
    if (!Number.isInteger(count) || count < 0 || count > 1000) {
      return wrong({ code: 'out-of-range', where: '', found: count, min: 0, max: 1000 });
    }
  }
  return { state: 'counts', value: given as Readonly<Record<string, number>> };
}

function wrong(issue: Issue): FieldFact {
  return { state: 'wrong', issues: [issue] };
}

/** What stood there, short enough to quote. */
function shown(reading: Reading): string {
  const { value } = reading;
  return (typeof value === 'string' ? value : (JSON.stringify(value) ?? '')).slice(0, 40);
}

/** A file may hold anything where a unit should stand. */
function unitOf(reading: Reading): string {
  return typeof reading.unit === 'string' ? reading.unit : '1';
}
