/** A finding: what one rule says of one subject, with everything needed to show why. */
import type { Source } from '@firstfire/engine';
import type { Subject } from './fact.ts';
import type { Hazard, Line, Outcome } from './rule.ts';

export type Verdict = 'meets' | 'tight' | 'fails' | 'unknown' | 'does not apply';

export interface Finding {
  readonly rule: string;
  readonly line: Line;
  readonly subject: Subject;
  readonly verdict: Verdict;
  readonly outcome?: Outcome;
  /** Distance to the limit over the yardstick, positive on the safe side; absent for yes and no. */
  readonly margin?: number;
  /** 95 % half-width of the margin, from the ± of its facts. */
  readonly plusMinus?: number;
  /** Why a met limit is called tight. */
  readonly tightBy?: 'guard' | 'uncertainty';
  /** Whom the outcome's reason is about. */
  readonly between?: readonly Subject[];
  readonly source: Source;
  readonly edition: string;
  /** The figure rests on memory: look it up before relying on it. */
  readonly checkTheBook: boolean;
  /** Readings that would settle an unknown. */
  readonly missing: readonly string[];
  /** Readings that are only assumed. */
  readonly assumed: readonly string[];
  readonly stops: boolean;
  /** Its rule missed is an immediate hazard of this kind. */
  readonly hazard?: Hazard;
}

/** `rule@subject`, unique in a study. */
export function findingId(finding: Finding): string {
  return `${finding.rule}@${finding.subject.id}`;
}
