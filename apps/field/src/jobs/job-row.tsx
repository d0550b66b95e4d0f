/** One job in the list: its name, stage and place, its smallest margin, what is next, and what can be done with it. */
import { Link } from 'wouter';
import { columnOf } from '../columns/column.ts';
import { ColumnPicture } from '../columns/column-picture.tsx';
import type { Summary, Worst } from '../store/database.ts';
import { useText } from '../text/use-text.tsx';
import { JobMenu } from './job-menu.tsx';

export interface JobRowProps {
  readonly job: Summary;
  readonly onGone: (doc: string) => void;
}

export function JobRow({ job, onGone }: JobRowProps) {
  const text = useText();
  const { worst, next } = job;
  return (
    <li className="job-line">
      <Link className="job-row" href={`/jobs/${job.doc}`}>
        <span className="job-name">{job.name || text.phrase('unnamed')}</span>
        <span className="second">
          {[text.phrase(`stage.${job.stage}`), job.place].filter(Boolean).join(' · ')}
        </span>
        {worst !== undefined && (
          <span className="job-worst">
            <Mark worst={worst} />
            <span>
              <strong>
                {[text.verdict(worst.verdict), text.percent(worst.margin)].filter(Boolean).join(' ')}
              </strong>{' '}
              {text.rule(worst.rule).title}
            </span>
          </span>
        )}
        {next !== undefined && (
          <span className="second">{text.phrase('next-reading', { reading: text.path(next) })}</span>
        )}
      </Link>
      <JobMenu job={job} onGone={onGone} />
    </li>
  );
}

/** The worst finding by its shape, as the columns draw it. */
function Mark({ worst }: { readonly worst: Worst }) {
  const finding = {
    ...worst,
    line: 'heat',
    subject: { scope: 'job', id: '-', label: '' },
    source: { document: '', known: 'physics' },
    edition: 'any',
    checkTheBook: false,
    missing: [],
    assumed: [],
    stops: false,
  } as const;
  return <ColumnPicture column={columnOf({ line: 'heat', built: true, findings: [finding] })} side={16} />;
}
