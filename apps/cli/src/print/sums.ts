/** The list of sums, and one sum described: everything follows from its declaration. */
import type { AnySum, NumberInput, SumInput } from '@firstfire/sums';
import { fill, type Slots, type Speech, sourceText } from '@firstfire/words';
import { columns } from './table.ts';
import { showIn } from './value.ts';

export function listSums(sums: readonly AnySum[], { words: { sums: words } }: Speech): string {
  return columns(
    sums.map((one) => [one.name, words[one.name] ?? '', `→ ${Object.keys(one.outputs).join(', ')}`]),
  );
}

export function describeSum(sum: AnySum, speech: Speech): string {
  const { sums: words, phrases } = speech.words;
  const say = (key: string, slots: Slots = {}): string => fill(phrases[key] ?? '', slots);
  const inputs = Object.entries(sum.inputs).map(([name, input]) => [
    name,
    inputText(input, speech),
    words[`input.${name}`] ?? '',
  ]);
  const outputs = Object.entries(sum.outputs).map(([name, { unit }]) => [
    name,
    unit === '1' ? '' : `[${unit}]`,
    words[`input.${name}`] ?? '',
  ]);
  const given = Object.entries(sum.example.given).map(([name, value]) => shellWord(`${name}=${value}`));
  const gives = Object.entries(sum.example.gives).map(([name, value]) => `${name} ${value}`);
  return [
    say('cli.sum.title', { name: sum.name, text: words[sum.name] ?? '' }),
    say('cli.sum.inputs'),
    columns(inputs, '  '),
    say('cli.sum.outputs'),
    columns(outputs, '  '),
    say('cli.sum.example'),
    `  firstfire sum ${sum.name} ${given.join(' ')}`,
    `  ${say('cli.sum.gives', { values: gives.join(', '), source: sourceText(sum.example.source, speech, true) })}`,
    say('cli.sum.source', { source: sourceText(sum.source, speech, true) }),
  ].join('\n');
}

function inputText(input: SumInput, speech: Speech): string {
  const text = input.type === 'choice' ? input.choices.join(' | ') : rangeText(input, speech);
  if (!input.optional && input.fallback === undefined) return text;
  return fill(speech.words.phrases['cli.sum.optional'] ?? '', { text });
}

function rangeText({ unit, min, max, kind }: NumberInput, speech: Speech): string {
  const { phrases } = speech.words;
  const name = unit === '1' ? (phrases['cli.sum.number'] ?? '') : `[${unit}]`;
  if (min === undefined && max === undefined) return name;
  const end = (si: number | undefined): string =>
    si === undefined ? '…' : showIn({ si, unit, kind }, speech);
  return fill(phrases['cli.sum.range'] ?? '', { unit: name, low: end(min), high: end(max) });
}

function shellWord(text: string): string {
  return /^[\w./=:-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;
}
