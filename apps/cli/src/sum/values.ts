/** A sum's inputs from texts: units understood, ranges held, everything that is wrong told at once. */
import { fail, type Issue, ok, quantity, type Result } from '@firstfire/engine';
import type { AnySum, NumberInput, SumInput } from '@firstfire/sums';

export type Values = Readonly<Record<string, number | string | undefined>>;

/** Reads one input; a bare number is refused unless the column head gave its unit. */
export function readInput(
  name: string,
  input: SumInput,
  text: string,
  defaultUnit?: string,
): Result<number | string> {
  if (input.type === 'choice') {
    return input.choices.includes(text)
      ? ok(text)
      : fail({ code: 'not-understood', where: name, found: text, expected: input.choices });
  }
  const parsed = quantity.parseQuantity(text, input.kind, defaultUnit === undefined ? {} : { defaultUnit });
  if (!parsed.ok) return fail(...parsed.issues.map((issue) => ({ ...issue, where: name })));
  return inRange(name, input, parsed.value.si);
}

export function inRange(name: string, { kind, min, max }: NumberInput, si: number): Result<number> {
  if (!Number.isFinite(si)) return fail({ code: 'not-finite', where: name, found: String(si), kind });
  if ((min !== undefined && si < min) || (max !== undefined && si > max)) {
    const range = { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
    return fail({ code: 'out-of-range', where: name, found: si, kind, ...range });
  }
  return ok(si);
}

/** All inputs of one case, by name; an unknown or missing name is an issue that lists the right ones. */
export function readInputs(sum: AnySum, texts: Readonly<Record<string, string>>): Result<Values> {
  const values: Record<string, number | string | undefined> = {};
  const issues: Issue[] = [];
  for (const name of Object.keys(texts)) {
    if (Object.hasOwn(sum.inputs, name)) continue;
    issues.push({ code: 'not-understood', where: name, found: name, expected: Object.keys(sum.inputs) });
  }
  for (const [name, input] of Object.entries(sum.inputs)) {
    const text = Object.hasOwn(texts, name) ? texts[name] : undefined;
    if (text === undefined || text === '') {
      if (input.fallback !== undefined) values[name] = input.fallback;
      else if (!input.optional) issues.push({ code: 'ill-formed', where: name, reason: 'input-missing' });
      continue;
    }
    const read = readInput(name, input, text);
    if (read.ok) values[name] = read.value;
    else issues.push(...read.issues);
  }
  return issues.length > 0 ? fail(...issues) : ok(values);
}
