/** Where the work is, in plain sentences: on the device, in the second copy, by the browser's promise, in files. */

import { useState } from 'react';
import { onlyHere } from '../store/remind.ts';
import { useShop } from '../store/shop-context.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';

export function WhereItIs() {
  const shop = useShop();
  const text = useText();
  const jobs = useSignal(shop.listed) ?? [];
  const { lasting, exportedAt } = useSignal(shop.marks);
  const ill = useSignal(shop.storage.ill);
  const noCopy = useSignal(shop.copy.ill);
  const count = jobs.filter(({ deleted }) => deleted === undefined).length;
  const open = onlyHere(jobs);
  const date = new Date(exportedAt).toLocaleDateString(text.reader.speech.locale);
  return (
    <ul className="keeping-list">
      <Line good={ill === undefined}>
        {ill === undefined ? text.phrase('keeping-says', { count }) : text.phrase(`ill.${ill}`)}
      </Line>
      {ill === 'damaged' && noCopy === undefined && <Rebuild />}
      <Line good={noCopy === undefined}>{text.phrase(noCopy === undefined ? 'copy-kept' : 'copy-none')}</Line>
      <Line good={lasting === true}>{text.phrase(`lasting.${lasting ?? 'unasked'}`)}</Line>
      <Line good={open === 0}>
        {open > 0 && text.phrase('only-here', { count: open })}
        {open === 0 && text.phrase(exportedAt > 0 ? 'all-in-file' : 'nothing-to-export')}
        {exportedAt > 0 && ` ${text.phrase('last-export', { date })}`}
      </Line>
    </ul>
  );
}

interface LineProps {
  readonly good: boolean;
  readonly children: React.ReactNode;
}

function Line({ good, children }: LineProps) {
  return (
    <li>
      <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true" className={good ? 'good' : 'open'}>
        {good ? <path d="m5 13 5 5 9-11" /> : <path d="M12 5v9M12 18v2" />}
      </svg>
      <span>{children}</span>
    </li>
  );
}

/** The way out of a database that cannot be opened any more. */
function Rebuild() {
  const shop = useShop();
  const text = useText();
  const [failed, setFailed] = useState(false);
  const rebuild = (): void => {
    shop.rebuild().then(
      (done) => setFailed(!done),
      () => setFailed(true),
    );
  };
  return (
    <li className="keeping-rebuild">
      <button type="button" className="button" onClick={rebuild}>
        {text.phrase('rebuild')}
      </button>
      {failed && <span role="alert">{text.phrase('rebuild-failed')}</span>}
    </li>
  );
}
