/** What a part of the picture waits for, or why these readings give none. */
import type { Issue } from '@firstfire/engine';
import { useText } from '../text/use-text.tsx';
import { ReadingLink } from '../ui/reading-link.tsx';
import { issueText } from './issue-text.ts';

interface WaitingProps {
  readonly missing: readonly string[];
  readonly issues: readonly Issue[];
}

export function Waiting({ missing, issues }: WaitingProps) {
  const text = useText();
  const [issue] = issues;
  if (missing.length === 0 && issue === undefined) return null;
  return (
    <div className="notice heat-waiting">
      {missing.length > 0 && <p>{text.phrase('heat.waits', { count: missing.length })}</p>}
      {missing.map((path) => (
        <ReadingLink key={path} path={path} />
      ))}
      {missing.length === 0 && issue !== undefined && (
        <>
          <p>{issueText(issue, text)}</p>
          {issue.where.split('/').length === 3 && <ReadingLink path={issue.where} />}
        </>
      )}
    </div>
  );
}
