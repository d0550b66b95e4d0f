/** The six columns: one a line, in sight while anything is edited. A tap opens the line. */
import type { Study } from '@firstfire/job';
import { findingId } from '@firstfire/reference';
import { Link } from 'wouter';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { bracketOf, type Column, columnOf } from './column.ts';
import { ColumnPicture } from './column-picture.tsx';
import { useBefore, usePlusMinus, useSpoken } from './use-columns.ts';

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
  const { doc } = useSession();
  const text = useText();
  const study = tried ?? now;
  const before = useBefore(study);
  const spreads = usePlusMinus(!strip);
  const columns = study.lines.map((line) => withBracket(columnOf(line), spreads));
  const spoken = useSpoken(columns);
  return (
    <nav className={strip ? 'columns strip' : 'columns'} aria-label={text.phrase('six-lines')}>
      {columns.map((column) => (
        <Link
          key={column.line}
          href={`/jobs/${doc}/${column.line}${column.line === open && !ladder ? '/ladder' : ''}`}
          className={column.line === open ? 'column open' : 'column'}
          aria-current={column.line === open ? 'page' : undefined}
        >
          <OneColumn column={column} strip={strip} before={before.get(column.line)} />
        </Link>
      ))}
      <span className="sr" role="status">
        {spoken.map((one) => text.phrase('column-now', wordsOf(one, text))).join(' ')}
      </span>
    </nav>
  );
}

interface OneColumnProps {
  readonly column: Column;
  readonly strip: boolean;
  readonly before: Column | undefined;
}

function OneColumn({ column, strip, before }: OneColumnProps) {
  const text = useText();
  return (
    <>
      <ColumnPicture
        column={column}
        side={strip ? 22 : 38}
        isInRow
        {...(before === undefined ? {} : { before })}
      />
      <span className="name">{text.line(column.line)}</span>
      <span className={column.shape === 'fails' ? 'figure plate' : 'figure'}>
        {text.columnFigure(column)}
      </span>
      <span className={strip ? 'sr' : 'word'}>{text.verdict(column.shape)}</span>
      <span className="sr">{text.columnSpoken(column)}</span>
    </>
  );
}

function wordsOf({ line, shape }: Column, text: ReturnType<typeof useText>) {
  return { line: text.line(line), verdict: text.verdict(shape) };
}

function withBracket(column: Column, spreads: ReadonlyMap<string, number>): Column {
  const { worst } = column;
  const plusMinus = worst === undefined ? undefined : spreads.get(findingId(worst));
  if (worst?.margin === undefined || plusMinus === undefined) return column;
  const bracket = bracketOf(worst.margin, plusMinus);
  return bracket === undefined ? column : { ...column, bracket };
}
