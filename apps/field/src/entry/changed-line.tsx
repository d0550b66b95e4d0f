/** What the entry would change, in one line: the column that moves most, by its figure and its verdict. */
import type { Study } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { columnChanges } from './trial.ts';

export interface ChangedLineProps {
  readonly before: Study;
  readonly after: Study;
}

export function ChangedLine({ before, after }: ChangedLineProps) {
  const text = useText();
  const [first, ...more] = before === after ? [] : columnChanges(before, after);
  if (first === undefined) return <p className="entry-changed" />;
  const isSame = first.before.shape === first.after.shape;
  return (
    <p className="entry-changed">
      <strong>{text.line(first.after.line)}</strong>{' '}
      {text.phrase(isSame ? 'changed-still' : 'changed-now', {
        before: text.columnFigure(first.before),
        after: text.columnFigure(first.after),
        verdict: text.verdict(first.after.shape),
      })}
      {more.length > 0 && (
        <span className="second"> · {more.map((one) => text.line(one.after.line)).join(', ')}</span>
      )}
    </p>
  );
}
