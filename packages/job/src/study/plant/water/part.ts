/**
 * Parts of what the loop gives, each from readings of its own beside those that every flow depends on: what is missing
 * for one leaves the others standing. The parts whose readings are all there are one model, so that one layout of the
 * pad serves them all.
 */
import type { Result, Step } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import type { JobView, ReadingPath } from '../../facts/view.ts';
import type { Model, Output, Parameter, Run, Values } from '../model.ts';
import { unknownModel } from './no-run.ts';
import type { LoopAt, WaterLoop } from './water-loop.ts';

export interface PartSpec {
  readonly provides: readonly FactKey[];
  readonly run: (at: LoopAt, values: Values) => Result<readonly Output[]>;
  readonly explain: (fact: FactKey, at: LoopAt, values: Values) => readonly Step[];
}

export interface Part extends PartSpec {
  readonly reader: SurveyReader;
}

/** A part that takes its own readings. */
export function part(view: JobView, build: (reader: SurveyReader) => PartSpec): Part {
  const reader = new SurveyReader(view);
  return { ...build(reader), reader };
}

type Readings = readonly ReadingPath[];

export interface Base {
  readonly reader: SurveyReader;
  readonly loop: WaterLoop;
}

/** The model of all parts that can run, and one for each that cannot yet. */
export function partModels(base: Base, parts: readonly Part[]): readonly Model[] {
  const lacking = base.reader.missing.length + base.reader.wrong.length > 0;
  const ready = lacking
    ? []
    : parts.filter(({ reader }) => reader.missing.length + reader.wrong.length === 0);
  const waiting = parts.filter((one) => !ready.includes(one));
  return [
    ...(ready.length > 0 ? [jointModel(base, ready)] : []),
    ...waiting.map((one) => waitingModel(base, one)),
  ];
}

function waitingModel(base: Base, { provides, reader }: Part): Model {
  const missing = [...new Set([...base.reader.missing, ...reader.missing])];
  return { ...unknownModel(provides, missing), wrong: [...base.reader.wrong, ...reader.wrong] };
}

function jointModel(base: Base, parts: readonly Part[]): Model {
  const parameters = new Map(base.reader.parameters.map((one): [string, Parameter] => [one.reading, one]));
  for (const { reader } of parts) {
    for (const one of reader.parameters) parameters.set(one.reading, one);
  }
  const ofAll = assumedIn(base.reader);
  const assumed = new Map(
    parts.map((one): [Part, Readings] => [one, [...new Set([...ofAll, ...assumedIn(one.reader)])]]),
  );
  return {
    id: 'water.loop',
    provides: parts.flatMap((one) => one.provides),
    parameters: [...parameters.values()],
    missing: [],
    wrong: [],
    run: (values) => runAll(base.loop, assumed, values),
    explain: (fact, values) => {
      const at = base.loop.at(values);
      const one = parts.find(({ provides }) => provides.includes(fact));
      return at.ok && one ? one.explain(fact, at.value, values) : [];
    },
  };
}

function assumedIn({ parameters }: SurveyReader): Readings {
  return parameters.filter(({ assumed }) => assumed).map(({ reading }) => reading);
}

function runAll(loop: WaterLoop, parts: ReadonlyMap<Part, Readings>, values: Values): Run {
  const at = loop.at(values);
  if (!at.ok) return at;
  const outputs: Output[] = [];
  const issues = [];
  for (const [one, assumed] of parts) {
    const found = one.run(at.value, values);
    if (found.ok) outputs.push(...found.value.map((output) => ({ ...output, assumed })));
    else {
      issues.push(...found.issues);
      const unknown = found.issues.map((issue) => issue.where as ReadingPath);
      outputs.push(...one.provides.map((fact): Output => ({ fact, unknown })));
    }
  }
  return { ok: true, outputs, issues };
}
