/**
 * The ± of what a model gives: each known reading is moved by its own ±, one at a time, and the changes are added as
 * root sum of squares. Readings are taken as independent, the model as straight over their ±.
 *
 * Source: JCGM 100:2008 (GUM), section 5.1.2 and the numerical way of 5.1.3 note 2, in 95 % half-widths throughout.
 */
import type { Model, Output, Values } from './model.ts';

/** 95 % half-width by fact. Facts that a moved reading leaves without a solution keep what the others give. */
export function plusMinusOf(
  model: Model,
  outputs: readonly Output[],
  values: Values,
): ReadonlyMap<string, number> {
  const squares = new Map<string, number>();
  for (const parameter of model.parameters) {
    if (parameter.plusMinus === 0) continue;
    const moved = model.run((reading) =>
      reading === parameter.reading ? parameter.value + parameter.plusMinus : values(reading),
    );
    if (!moved.ok) continue;
    addSquares(squares, outputs, moved.outputs);
  }
  return new Map([...squares].map(([fact, square]) => [fact, Math.sqrt(square)]));
}

function addSquares(squares: Map<string, number>, at: readonly Output[], moved: readonly Output[]): void {
  const before = new Map(at.map((output) => [output.fact, 'value' in output ? output.value : Number.NaN]));
  for (const output of moved) {
    if (!('value' in output)) continue;
    const change = output.value - (before.get(output.fact) ?? Number.NaN);
    if (Number.isFinite(change)) squares.set(output.fact, (squares.get(output.fact) ?? 0) + change ** 2);
  }
}
