/** What a part of the picture waits for, or why these readings give none. */
import type { Issue } from '@firstfire/engine';
import { useText } from '../text/use-text.tsx';
import { ReadingLink } from '../ui/reading-link.tsx';
import { issueText } from './issue-text.ts';

interface WaitingProps {
  readonly missing: readonly string[];
  readonly issues: readonly Issue[];
  /** Readings that are asked for further up already. */
  readonly asked?: readonly string[];
}

export function Waiting({ missing, issues, asked = [] }: WaitingProps) {
  const text = useText();
  const [issue] = issues;
  const left = missing.filter((path) => !asked.includes(path));
  if (missing.length > 0 && left.length === 0)
    return <p className="second">{text.phrase('heat.waits-too')}</p>;
  if (left.length > 0)
    return (
      <div className="heat-waiting">
        <p>{text.phrase('heat.waits', { count: left.length })}</p>
        {left.map((path) => (
          <ReadingLink key={path} path={path} />
        ))}
      </div>
    );
  if (issue === undefined) return null;
  return (
    <div className="notice">
      <p>{issueText(issue, text)}</p>
      {issue.where.split('/').length === 3 && <ReadingLink path={issue.where} />}
    </div>
  );
}
