/** Every finding of a line on the one scale of the columns, worst first; a tap leads to the finding. */
import { type Finding, findingId } from '@firstfire/reference';
import { Link } from 'wouter';
import { heightOf } from '../columns/column.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import './working.css';

export function Ladder({ line }: { readonly line: string }) {
  const text = useText();
  const { study } = useMoment();
  const { doc } = useSession();
  const found = study.lines.find((one) => one.line === line)?.findings ?? [];
  return (
    <section className="ladder" aria-label={text.phrase('working.ladder', { line: text.line(line) })}>
      <ol>
        {found
          .filter((one) => one.verdict !== 'does not apply')
          .map((finding) => (
            <li key={findingId(finding)}>
              <Rung finding={finding} />
            </li>
          ))}
      </ol>
      <Link className="button plain" href={`/jobs/${doc}/${line}`} replace>
        {text.phrase('working.close')}
      </Link>
    </section>
  );
}

function Rung({ finding }: { readonly finding: Finding }) {
  const text = useText();
  const { doc } = useSession();
  const { verdict } = finding;
  const subject = text.subject(finding);
  return (
    <Link className="rung" href={`/jobs/${doc}/working/${encodeURIComponent(findingId(finding))}`}>
      <span className="rung-name">
        {text.rule(finding.rule).title}
        {subject !== '' && <small> {subject}</small>}
      </span>
      <span className="rung-bar" aria-hidden="true">
        <Bar finding={finding} />
      </span>
      <span className={verdict === 'fails' ? 'rung-figure plate' : 'rung-figure'}>
        {text.margin(finding) || (verdict === 'unknown' ? '?' : verdict === 'fails' ? '×' : '✓')}
        <span className="sr"> {text.verdict(verdict)}</span>
      </span>
    </Link>
  );
}

/** The limit stands at two fifths; what is short lies left of it, what is to spare right. */
const LIMIT = 40;

function Bar({ finding: { verdict, margin } }: { readonly finding: Finding }) {
  const share = margin === undefined ? 1 : heightOf(margin);
  const isShort = verdict === 'fails';
  const width = Math.max(1.5, share * (isShort ? LIMIT : 100 - LIMIT));
  const style =
    verdict === 'unknown' ? undefined : { left: `${isShort ? LIMIT - width : LIMIT}%`, width: `${width}%` };
  return <span className={`rung-fill ${verdict}`} style={style} />;
}
