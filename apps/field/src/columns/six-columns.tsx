/** The six columns: one a line, in sight while anything is edited. A tap opens the line. */
import type { Study } from '@firstfire/job';
import { Link } from 'wouter';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { columnOf } from './column.ts';
import { ColumnPicture } from './column-picture.tsx';

export interface SixColumnsProps {
  readonly open?: string;
  /** Whether the findings of the open line stand on one scale below. */
  readonly ladder?: boolean;
  /** While typing: lower, and without the verdict word. */
  readonly strip?: boolean;
  /** The job as it would be with what is being typed; as it is when left out. */
  readonly study?: Study;
}

export function SixColumns({ open, ladder = false, strip = false, study: tried }: SixColumnsProps) {
  const { study: now } = useMoment();
  const study = tried ?? now;
  const { doc } = useSession();
  const text = useText();
  return (
    <nav className={strip ? 'columns strip' : 'columns'} aria-label={text.phrase('six-lines')}>
      {study.lines.map((line) => {
        const column = columnOf(line);
        const figure = text.columnFigure(column);
        return (
          <Link
            key={line.line}
            href={`/jobs/${doc}/${line.line}${line.line === open && !ladder ? '/ladder' : ''}`}
            className={line.line === open ? 'column open' : 'column'}
            aria-current={line.line === open ? 'page' : undefined}
          >
            <ColumnPicture column={column} side={strip ? 22 : 38} />
            <span className="name">{text.line(line.line)}</span>
            <span className={column.shape === 'fails' ? 'figure plate' : 'figure'}>{figure}</span>
            <span className={strip ? 'sr' : 'word'}>{text.verdict(column.shape)}</span>
            <span className="sr">{text.columnSpoken(column)}</span>
          </Link>
        );
      })}
    </nav>
  );
}
