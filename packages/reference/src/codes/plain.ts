/** Rules in the plainest forms: a yes, a least, a most, with a limit of the edition. Just met is how they are built. */
import type { quantity } from '@firstfire/engine';
import {
  type AnyRule,
  defineRule,
  type Edition,
  type FactName,
  type Line,
  type Scope,
} from '../evaluate/index.ts';

interface Plain<V> {
  readonly id: string;
  readonly line: Line;
  readonly scope: Scope;
  readonly fact: FactName;
  readonly editions: readonly Edition<V>[];
}

/** Holds where the fact says yes. */
export function saysYes({ fact, ...rule }: Plain<unknown>): AnyRule {
  return defineRule({
    ...rule,
    numbers: {},
    words: { said: fact },
    check: (_n, w) => ({ sense: 'holds', holds: w.said === 'yes' }),
  });
}

interface Limit {
  readonly limit: number;
}

interface Measured extends Plain<Limit> {
  readonly kind: quantity.Kind;
  readonly sense: 'at-least' | 'at-most';
}

/** Holds the fact against the limit, which is its own yardstick. */
export function limited({ fact, kind, sense, ...rule }: Measured): AnyRule {
  return defineRule({
    ...rule,
    guard: 0,
    numbers: { found: fact },
    words: {},
    check: (n, _w, { limit }) => ({ sense, required: limit, found: n.found, kind, yardstick: limit }),
  });
}
