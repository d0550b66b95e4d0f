/** How a finding comes about, opened in place: what the rule asks, then every fact down to formula, reading, source. */
import { workingOf } from '@firstfire/job';
import { type Finding, findingId } from '@firstfire/reference';
import { unitsOf } from '@firstfire/words';
import { useEffect, useMemo, useRef } from 'react';
import { Link } from 'wouter';
import { today } from '../session/job-session.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { Steps } from './step-view.tsx';
import './working.css';

export default function WorkingView({ finding }: { readonly finding: Finding }) {
  const text = useText();
  const { view } = useMoment();
  const { doc } = useSession();
  const place = useRef<HTMLElement>(null);
  const id = findingId(finding);
  const working = useMemo(() => workingOf(view, id, { today: today(), uncertainty: false }), [view, id]);
  useEffect(() => {
    place.current?.closest('li')?.scrollIntoView({ block: 'start' });
    place.current?.focus({ preventScroll: true });
    // Closed, the focus goes back to what opened it.
    return () => document.getElementById(id)?.querySelector<HTMLElement>('.working-link')?.focus();
  }, [id]);
  const { asks } = text.rule(finding.rule);
  const { phrases } = text.reader.speech.words;
  const { medium } = unitsOf(finding, text.reader);
  return (
    <section ref={place} className="working" tabIndex={-1} aria-label={text.phrase('working.title')}>
      <h4>{text.phrase('working.title')}</h4>
      <p>{asks}</p>
      {working?.facts.map(({ fact, steps }) => (
        <div key={fact} className="working-fact">
          <h5>{phrases[`fact.${fact}`] ?? fact}</h5>
          {steps.length === 0 ? (
            <p className="second">{text.phrase('working.not-known')}</p>
          ) : (
            <Steps steps={steps} medium={medium} />
          )}
        </div>
      ))}
      <Link className="button" href={`/jobs/${doc}/${finding.line}`} replace>
        {text.phrase('working.close')}
      </Link>
    </section>
  );
}
