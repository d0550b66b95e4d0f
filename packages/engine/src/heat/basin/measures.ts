/** Checks of the lengths a person gives: each must be a real length, no longer than any basin. */
import type { Issue } from '../../trace/index.ts';
import { variableIssue } from '../../trace/index.ts';

const LONGEST = 500;
const DEEPEST = 30;

/** The issues of named lengths, m. */
export function lengthIssues(lengths: Readonly<Record<string, number>>): Issue[] {
  return issuesUpTo(lengths, LONGEST);
}

/** The issues of named depths, m. */
export function depthIssues(depths: Readonly<Record<string, number>>): Issue[] {
  return issuesUpTo(depths, DEEPEST);
}

function issuesUpTo(values: Readonly<Record<string, number>>, max: number): Issue[] {
  return Object.entries(values).flatMap(([where, value]) => {
    const issue = variableIssue(where, value, { symbol: '', kind: 'length', min: 0.01, max });
    return issue ? [issue] : [];
  });
}
