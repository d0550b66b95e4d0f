/** The list of sums, and one sum described: everything follows from its declaration. */
import type { AnySum, SumInput } from '@firstfire/sums';
import { wordsOf } from '@firstfire/words';
import { columns } from './table.ts';
import { showIn } from './value.ts';

export function listSums(sums: readonly AnySum[]): string {
  const { sums: words } = wordsOf('en');
  return columns(
    sums.map((one) => [one.name, words[one.name] ?? '', `→ ${Object.keys(one.outputs).join(', ')}`]),
  );
}

export function describeSum(sum: AnySum): string {
  const { sums: words } = wordsOf('en');
  const inputs = Object.entries(sum.inputs).map(([name, input]) => [
    name,
    inputText(input),
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
    `${sum.name}: ${words[sum.name] ?? ''}`,
    'inputs',
    columns(inputs, '  '),
    'outputs',
    columns(outputs, '  '),
    'example',
    `  firstfire sum ${sum.name} ${given.join(' ')}`,
    `  gives ${gives.join(', ')} (${sourceText(sum.example.source)})`,
    `source: ${sourceText(sum.source)}`,
  ].join('\n');
}

function inputText(input: SumInput): string {
  const may = input.optional || input.fallback !== undefined ? ', may be left out' : '';
  if (input.type === 'choice') return input.choices.join(' | ') + may;
  const unit = input.unit === '1' ? 'number' : `[${input.unit}]`;
  const { min, max, kind } = input;
  if (min === undefined && max === undefined) return unit + may;
  const ends = [min, max].map((end) => (end === undefined ? '…' : showIn(end, input.unit, kind)));
  return `${unit} ${ends.join(' to ')}${may}`;
}

function sourceText(source: { document: string; at?: string; known: string }): string {
  return [source.document, source.at, source.known].filter(Boolean).join(', ');
}

function shellWord(text: string): string {
  return /^[\w./=:-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;
}
