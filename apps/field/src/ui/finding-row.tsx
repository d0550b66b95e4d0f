/** One finding: its shape, what was found against what is asked, and what it rests on. */
import { type Finding, findingId } from '@firstfire/reference';
import { lazy, memo, Suspense } from 'react';
import { columnOf } from '../columns/column.ts';
import { ColumnPicture } from '../columns/column-picture.tsx';
import { useText } from '../text/use-text.tsx';
import { WorkingLink } from '../working/working-link.tsx';
import { ReadingLink } from './reading-link.tsx';

const WorkingView = lazy(() => import('../working/working-view.tsx'));

export interface FindingRowProps {
  readonly finding: Finding;
  /** How it comes about, opened in place. */
  readonly isWorked?: boolean;
}

/** A finding that stands is the same object from study to study, and is not written anew: there are dozens. */
export const FindingRow = memo(function FindingRow({ finding, isWorked = false }: FindingRowProps) {
  const text = useText();
  const { verdict, missing, assumed } = finding;
  const subject = text.subject(finding);
  return (
    <li className={`finding ${verdict.replaceAll(' ', '-')}`} id={findingId(finding)}>
      <ColumnPicture column={columnOf({ line: finding.line, built: true, findings: [finding] })} side={22} />
      <div className="finding-text">
        <h3 className="finding-title">{text.rule(finding.rule).title}</h3>
        {subject !== '' && <p className="second">{subject}</p>}
        {verdict !== 'unknown' && <p className="outcome">{text.outcome(finding)}</p>}
        {missing.length > 0 && (
          <p className="missing">
            {missing.map((path) => (
              <ReadingLink key={path} path={path} />
            ))}
          </p>
        )}
        {assumed.length > 0 && verdict !== 'unknown' && (
          <p className="second">
            {text.phrase('rests-on', { readings: '' })}
            {assumed.map((path) => (
              <ReadingLink key={path} path={path} />
            ))}
          </p>
        )}
        {verdict === 'fails' && text.rule(finding.rule).mend !== undefined && (
          <p>{text.rule(finding.rule).mend}</p>
        )}
        <p className="second source">
          {text.source(finding)}
          {finding.checkTheBook && <strong> · {text.phrase('check-the-book')}</strong>}
        </p>
      </div>
      <div className="finding-figure">
        <strong>{text.margin(finding)}</strong>
        <span className="second">{text.verdict(verdict)}</span>
      </div>
      {!isWorked && <WorkingLink finding={finding} />}
      {isWorked && (
        <Suspense>
          <WorkingView finding={finding} />
        </Suspense>
      )}
    </li>
  );
});
