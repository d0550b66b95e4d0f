/** What a solve is asked and what it answers. */
import type { Issue } from '../../trace/index.ts';
import type { Settings } from './iterate.ts';
import { BLOCKED, HOLDING, OPEN, SHUT } from './link-table.ts';

export interface SolveOptions extends Partial<Settings> {
  /** Forget the last solution and start afresh. */
  readonly cold?: boolean;
  /**
   * What a part without any held potential is: an `issue` (the rule), or left as it is: its flows are solved,
   * its potentials stand only relative to each other, and `isHeld` tells. A demand in it stays an issue.
   */
  readonly cutOff?: 'issue' | 'leave';
}

export type SolveReport =
  | {
      readonly ok: true;
      readonly iterations: number;
      /**
       * Worst miss of a link law (beyond the last digits of the potentials, over the greatest loss) or of continuity
       * (over the greatest flow).
       */
      readonly residual: number;
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** `blocked`: holds back reverse flow. `holding`: a regulator in charge of its outlet. `shut`: closed, or at rest. */
export type LinkState = 'open' | 'blocked' | 'holding' | 'shut';

export const STATES: Readonly<Record<number, LinkState>> = {
  [OPEN]: 'open',
  [BLOCKED]: 'blocked',
  [HOLDING]: 'holding',
  [SHUT]: 'shut',
};

/** Relative tolerances and the bound of the iteration, see `iterate.ts`. */
const DEFAULTS: Settings = { flowTolerance: 1e-8, headTolerance: 1e-8, maxIterations: 150 };
const NO_OPTIONS: SolveOptions = {};

/** Tolerances and bound as asked for; what was left out is as by default. */
export function settingsOf(options: SolveOptions | undefined): Settings {
  return options === undefined ? DEFAULTS : { ...DEFAULTS, ...options };
}

/** The options, or none. */
export function optionsOf(options: SolveOptions | undefined): SolveOptions {
  return options ?? NO_OPTIONS;
}
