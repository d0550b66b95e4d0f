/** What a person has to know of the keeping, and no more: shown on the list of jobs and on the page of its own. */
import { useState } from 'react';
import { Link } from 'wouter';
import { isExportDue, onlyHere } from '../store/remind.ts';
import { useShop } from '../store/shop-context.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import './keeping.css';

export function Notices() {
  return (
    <>
      <Refused />
      <Lost />
      <CameBack />
      <Hurt />
      <Reminder />
    </>
  );
}

/** The device keeps nothing now: the work is in memory. */
function Refused() {
  const shop = useShop();
  const text = useText();
  const ill = useSignal(shop.storage.ill);
  if (ill === undefined) return null;
  return (
    <p className="notice keeping-notice" role="alert">
      <span>{text.phrase(`ill.${ill}`)}</span>
      <Link className="button plain" href="/keeping">
        {text.phrase('keeping')}
      </Link>
    </p>
  );
}

/** Everything is gone, and something remembers that there was more. */
function Lost() {
  const shop = useShop();
  const text = useText();
  const lost = useSignal(shop.lost);
  if (lost === undefined) return null;
  const when =
    lost.changed === 0 ? '?' : new Date(lost.changed).toLocaleDateString(text.reader.speech.locale);
  return (
    <div className="notice keeping-notice" role="alert">
      <p>{text.phrase('lost', { count: lost.jobs, when })}</p>
      <Link className="button" href="/keeping">
        {text.phrase('import')}
      </Link>
      <button type="button" className="button plain" onClick={() => void shop.forgetLost()}>
        {text.phrase('lost-forget')}
      </button>
    </div>
  );
}

function CameBack() {
  const text = useText();
  const count = useSignal(useShop().cameBack);
  if (count === 0) return null;
  return (
    <p className="notice" role="status">
      {text.phrase('came-back', { count })}
    </p>
  );
}

/** Rows that the database could not give back. */
function Hurt() {
  const text = useText();
  const bad = useSignal(useShop().storage.bad);
  const count = [...bad.values()].reduce((sum, one) => sum + one, 0);
  if (count === 0) return null;
  return (
    <p className="notice" role="status">
      {text.phrase('rows-hurt', { count })}
    </p>
  );
}

/** At most once a week: the newest work is in no file. */
function Reminder() {
  const shop = useShop();
  const text = useText();
  const jobs = useSignal(shop.listed) ?? [];
  const marks = useSignal(shop.marks);
  const [now] = useState(() => Date.now());
  if (!isExportDue(jobs, marks, now)) return null;
  return (
    <p className="keeping-reminder keeping-notice" role="status">
      <span>{text.phrase('only-here', { count: onlyHere(jobs) })}</span>
      <Link className="button plain" href="/keeping">
        {text.phrase('export-all')}
      </Link>
      <button type="button" className="button plain" onClick={() => void shop.quiet()}>
        {text.phrase('not-now')}
      </button>
    </p>
  );
}
