/** Rules in the plainest form: a yes. */
import {
  type AnyRule,
  defineRule,
  type Edition,
  type FactName,
  type Line,
  type Scope,
} from '../evaluate/index.ts';

interface Plain {
  readonly id: string;
  readonly line: Line;
  readonly scope: Scope;
  readonly fact: FactName;
  readonly editions: readonly Edition<unknown>[];
}

/** Holds where the fact says yes. */
export function saysYes({ fact, ...rule }: Plain): AnyRule {
  return defineRule({
    ...rule,
    numbers: {},
    words: { said: fact },
    check: (_n, w) => ({ sense: 'holds', holds: w.said === 'yes' }),
  });
}
