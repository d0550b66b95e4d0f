/** One finding: its shape, what was found against what is asked, and what it rests on. */
import { type Finding, findingId } from '@firstfire/reference';
import { columnOf } from '../columns/column.ts';
import { ColumnPicture } from '../columns/column-picture.tsx';
import { useText } from '../text/use-text.tsx';
import { ReadingLink } from './reading-link.tsx';

export function FindingRow({ finding }: { readonly finding: Finding }) {
  const text = useText();
  const { verdict, missing, assumed } = finding;
  const subject = text.subject(finding);
  return (
    <li className={`finding ${verdict.replaceAll(' ', '-')}`} id={findingId(finding)}>
      <ColumnPicture column={columnOf({ line: finding.line, built: true, findings: [finding] })} side={22} />
      <div className="finding-text">
        <h3>{text.rule(finding.rule).title}</h3>
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
    </li>
  );
}
