/** The working of a finding as a tree: what it stands on, down to formula, reading and source. */
import type { Source, Step, TracedValue } from '@firstfire/engine';
import { type JobView, type WorkedFact, workingOf } from '@firstfire/job';
import {
  type Dictionary,
  fill,
  givenText,
  marginText,
  outcomeText,
  type Reader,
  sourceText,
  subjectText,
  type Units,
  unitsOf,
  workedText,
} from '@firstfire/words';
import { problem } from '../problem.ts';
import { readingName } from './job-text.ts';
import { partNames } from './part-name.ts';
import { wrap } from './table.ts';

export interface WorkingRequest {
  readonly finding: string;
  readonly reader: Reader;
  readonly today: string;
}

interface Node {
  readonly text: string;
  readonly children: readonly Node[];
}

export function printWorking(view: JobView, { finding: id, reader, today }: WorkingRequest): string {
  const working = workingOf(view, id, { today });
  if (working === undefined) throw problem('cli.no-finding', { id });
  const { words } = reader.speech;
  const { finding } = working;
  const units = unitsOf(finding, reader);
  const rule = words.rules[finding.rule];
  const head = [
    [rule?.title ?? finding.rule, subjectText(finding.subject, words)].filter(Boolean).join(' · '),
    `${words.verdicts[finding.verdict]} ${marginText(finding, reader.speech)}`.trim(),
    outcomeText(finding, units),
    knownSource(finding.source, units),
  ];
  const tree = {
    text: head.filter(Boolean).join('\n'),
    children: working.facts.map((fact) => factNode(fact, units)),
  };
  return [wrap(rule?.asks ?? '', 100, ''), draw(tree)].filter(Boolean).join('\n\n');
}

function factNode({ fact, steps }: WorkedFact, units: Units): Node {
  return {
    text: units.speech.words.phrases[`fact.${fact}`] ?? fact,
    children: steps.map((step) => stepNode(step, units)),
  };
}

function stepNode(step: Step, units: Units): Node {
  const { words } = units.speech;
  switch (step.step) {
    case 'given': {
      const value =
        typeof step.value === 'number' ? givenText(step.value, step.kind, units) : chosen(step.value, words);
      const from = step.reading === undefined ? '' : ` (${readingName(step.reading, words)})`;
      const source = step.source === undefined ? '' : ` (${knownSource(step.source, units)})`;
      return { text: `${words.formulas[step.id] ?? step.id} = ${value}${from}${source}`, children: [] };
    }
    case 'group': {
      const value = step.value === undefined ? '' : ` = ${workedText(step.value, step.kind, units)}`;
      const title = fill(words.formulas[step.id] ?? step.id, partNames(step.about ?? {}, words));
      return { text: `${title}${value}`, children: step.children.map((child) => stepNode(child, units)) };
    }
    default: {
      const { result, equation, inputs, source } = step;
      const title = words.formulas[step.id] ?? step.id;
      const given = inputs.map((input) => valueText(input, units)).join(', ');
      const head = fill(words.phrases['cli.step'] ?? '', { title, value: valueText(result, units) });
      const lines = [head, equation, given, knownSource(source, units)];
      return { text: lines.join('\n'), children: step.children.map((child) => stepNode(child, units)) };
    }
  }
}

/** A word that was chosen, where it is one; a size or a name stays. */
function chosen(word: string, { choices }: Dictionary): string {
  return Object.hasOwn(choices, word) ? (choices[word] ?? word) : word;
}

function valueText({ symbol, value, kind }: TracedValue, units: Units): string {
  return `${symbol} = ${workedText(value, kind, units)}`;
}

function knownSource(source: Source, { speech }: Units): string {
  return `[${sourceText(source, speech, true)}]`;
}

function draw({ text, children }: Node, indent = ''): string {
  const lines = text.split('\n').join(`\n${indent}`);
  const below = children.map((child, index) => {
    const last = index === children.length - 1;
    const branch = last ? '└─ ' : '├─ ';
    return `${indent}${branch}${draw(child, `${indent}${last ? '   ' : '│  '}`)}`;
  });
  return [lines, ...below].join('\n');
}
