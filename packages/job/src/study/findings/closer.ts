/** The readings that would bring a finding closer if they were taken more closely: those whose ± moves it most. */
import { type AnyRule, type Finding, RULES } from '@firstfire/reference';
import { type FactKey, keyOf } from '../facts/book.ts';
import { directReading } from '../facts/direct.ts';
import type { JobView, ReadingPath } from '../facts/view.ts';
import { readingPath } from '../facts/view.ts';
import { type Model, type Output, ownValues } from '../plant/model.ts';
import { plantModels } from '../plant/models.ts';

/** Less than a fifth of what moves it most is not worth a second look. *Common practice, no source.* */
const WORTH = 0.2;

/** What moves it most first. A fact that is a reading itself stands with the largest, for nothing dilutes its ±. */
export function closerBy(view: JobView, finding: Finding): readonly ReadingPath[] {
  const rule = RULES.find((one) => one.id === finding.rule);
  if (rule === undefined) return [];
  const models = plantModels(view);
  const moved = new Map<ReadingPath, number>();
  for (const key of keysOf(rule, finding)) {
    const model = models.find((one) => one.provides.includes(key));
    const found = model === undefined ? directMove(key) : movesOf(model, key);
    for (const [path, by] of found) moved.set(path, Math.max(by, moved.get(path) ?? 0));
  }
  const most = Math.max(...[...moved.values()].filter(Number.isFinite), 0);
  return [...moved]
    .filter(([, by]) => by > 0 && by >= WORTH * most)
    .sort((a, b) => b[1] - a[1])
    .map(([path]) => path);
}

function keysOf(rule: AnyRule, { subject }: Finding): readonly FactKey[] {
  return Object.values(rule.numbers).map((fact) => keyOf(subject, fact));
}

function directMove(key: FactKey): readonly (readonly [ReadingPath, number])[] {
  const at = directReading(key);
  return at === undefined ? [] : [[readingPath(at.collection, at.id, at.field), Number.POSITIVE_INFINITY]];
}

/** How far each reading of a model moves a fact by its own ±, as a share of the fact. */
function movesOf(model: Model, key: FactKey): readonly (readonly [ReadingPath, number])[] {
  const values = ownValues(model);
  const run = model.run(values);
  const before = run.ok ? figureOf(run.outputs, key) : Number.NaN;
  if (!Number.isFinite(before)) return [];
  return model.parameters.flatMap(({ reading, value, plusMinus }) => {
    if (plusMinus === 0) return [];
    const other = model.run((path) => (path === reading ? value + plusMinus : values(path)));
    const change = other.ok ? Math.abs(figureOf(other.outputs, key) - before) : Number.NaN;
    return Number.isFinite(change) ? [[reading, change / (Math.abs(before) || 1)] as const] : [];
  });
}

function figureOf(outputs: readonly Output[], key: FactKey): number {
  const output = outputs.find(({ fact }) => fact === key);
  return output !== undefined && 'value' in output ? output.value : Number.NaN;
}
