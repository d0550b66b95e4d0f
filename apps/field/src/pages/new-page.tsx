/** A job begun: a name is enough, the rest is read at the site. Or an example, to look around. */
import { readJobFile } from '@firstfire/job';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { startOf } from '../next/templates.ts';
import { useShop } from '../store/shop-context.ts';
import { useText } from '../text/use-text.tsx';
import { BackLink } from '../ui/back-link.tsx';

const EXAMPLES = import.meta.glob('../../../../examples/*.job.json', {
  query: '?raw',
  import: 'default',
}) as Record<string, () => Promise<string>>;

export default function NewPage() {
  const text = useText();
  const shop = useShop();
  const [, go] = useLocation();
  const [name, setName] = useState('');
  const begin = async (): Promise<void> => {
    go(`/jobs/${await shop.begin(startOf(name.trim()))}`);
  };
  const show = async (load: () => Promise<string>): Promise<void> => {
    const read = readJobFile(await load());
    if (!read.ok) return;
    const { doc } = read.value.document;
    await shop.take(doc, read.value.operations);
    go(`/jobs/${doc}`);
  };
  return (
    <main className="page narrow">
      <BackLink href="/" />
      <h1>{text.phrase('begin')}</h1>
      <form action={begin} className="stack">
        <label className="stack">
          <span>{text.phrase('job-name')}</span>
          <input
            className="text-input"
            required
            maxLength={80}
            autoComplete="off"
            value={name}
            onChange={(event) => setName(event.target.value)}
          />
          <span className="second">{text.phrase('job-name-help')}</span>
        </label>
        <button type="submit" className="button main">
          {text.phrase('begin')}
        </button>
      </form>
      <h2>{text.phrase('from-example')}</h2>
      <ul className="job-list">
        {Object.entries(EXAMPLES).map(([path, load]) => (
          <li key={path}>
            <button type="button" className="job-row" onClick={() => void show(load)}>
              {text.phrase(`example.${path.replace(/^.*\/|\.job\.json$/g, '')}`)}
            </button>
          </li>
        ))}
      </ul>
    </main>
  );
}
