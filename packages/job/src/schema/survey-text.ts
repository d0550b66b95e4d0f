/**
 * A survey as a person writes it down: one short text a reading, with how it is known in front.
 *
 *     "input": "nameplate 400 kBtu/h"
 *     "length": "measured 27 ft 9-1/2 in ± 1 in"
 *     "where": "told outdoors"
 *
 * What the text means depends on the field: a quantity is parsed as its kind, a choice is one of its words. A reading
 * that needs more than that is written as an object, and passes through unchanged.
 */
import { fail, ok, quantity, type Result } from '@firstfire/engine';
import { type Field, HOW_KNOWN, type HowKnown, type Reading } from './field.ts';

/** Who took the readings and when, for all of them that do not say. */
export interface SurveyDefaults {
  readonly by?: string;
  readonly at?: string;
}

export function readingFromText(field: Field, text: string, defaults: SurveyDefaults = {}): Result<Reading> {
  const { how, rest } = splitHow(text);
  const common = { how, ...defaults };
  if (field.type === 'choice' && !field.choices.includes(rest)) {
    return fail({ code: 'not-understood', where: '', found: rest, expected: field.choices });
  }
  if (field.type === 'curve' || field.type === 'counts') {
    return fail({ code: 'not-understood', where: '', found: text, reason: 'object-expected' });
  }
  if (field.type !== 'quantity') return ok({ value: rest, ...common });
  const [main = '', pmText] = rest.split(/\s*(?:±|\+\/-)\s*/);
  const parsed = quantity.parseQuantity(main, field.kind);
  if (!parsed.ok) return parsed;
  const { value, unit } = parsed.value;
  const pm = pmText === undefined ? undefined : plusMinus(pmText, { kind: field.kind, unit });
  if (pm !== undefined && !pm.ok) return pm;
  return ok({
    value,
    unit,
    ...common,
    ...(pm === undefined ? {} : { pm: pm.value }),
    ...(main === `${value} ${unit}` ? {} : { typed: main }),
  });
}

/** A ± is a difference: read without the offset of the scale, and turned into the unit of its value. */
function plusMinus(text: string, of: { kind: quantity.Kind; unit: string }): Result<number> {
  const kind = of.kind === 'temperature' ? 'temperature-difference' : of.kind;
  const parsed = quantity.parseQuantity(text, kind);
  if (!parsed.ok) return parsed;
  const { si } = parsed.value;
  if (si < 0)
    return fail({
      code: 'out-of-range',
      where: '',
      found: si,
      min: 0,
      kind,
      reason: 'plus-minus-below-zero',
    });
  const step = quantity.si(1, of.unit, of.kind) - quantity.si(0, of.unit, of.kind);
  return ok(si / step);
}

function splitHow(text: string): { how: HowKnown; rest: string } {
  const trimmed = text.trim();
  const first = trimmed.split(/\s/, 1)[0] ?? '';
  const how = HOW_KNOWN.find((word) => word === first);
  return how === undefined
    ? { how: 'measured', rest: trimmed }
    : { how, rest: trimmed.slice(first.length).trim() };
}
