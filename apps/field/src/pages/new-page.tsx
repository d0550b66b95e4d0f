/** A job begun: a new site, a swap of an old heater, or an example to look around in. */
import { readJobFile } from '@firstfire/job';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { type Answers, BeginForm } from '../flows/begin-form.tsx';
import { newSite, swap } from '../next/templates.ts';
import { useShop } from '../store/shop-context.ts';
import { useText } from '../text/use-text.tsx';
import { BackLink } from '../ui/back-link.tsx';
import '../flows/flows.css';

const EXAMPLES = import.meta.glob('../../../../examples/*.job.json', {
  query: '?raw',
  import: 'default',
}) as Record<string, () => Promise<string>>;

export default function NewPage() {
  const text = useText();
  const shop = useShop();
  const [, go] = useLocation();
  const [kind, setKind] = useState<'new' | 'swap'>('new');
  const begin = async (answers: Answers): Promise<void> => {
    const edits = kind === 'swap' ? swap(answers) : newSite(answers);
    go(`/jobs/${await shop.begin(edits)}/walk`);
  };
  return (
    <main className="page narrow">
      <BackLink href="/" />
      <h1>{text.phrase('begin')}</h1>
      <div className="begin-kinds">
        {(['new', 'swap'] as const).map((one) => (
          <button
            key={one}
            type="button"
            className="button"
            aria-pressed={kind === one}
            onClick={() => setKind(one)}
          >
            {text.phrase(`kind.${one}`)}
          </button>
        ))}
      </div>
      <p className="second">{text.phrase(`kind-help.${kind}`)}</p>
      <BeginForm onBegin={begin} />
      <Examples />
    </main>
  );
}

function Examples() {
  const text = useText();
  const shop = useShop();
  const [, go] = useLocation();
  const show = async (load: () => Promise<string>): Promise<void> => {
    const read = readJobFile(await load());
    if (!read.ok) return;
    const { doc } = read.value.document;
    await shop.take(doc, read.value.operations);
    go(`/jobs/${doc}`);
  };
  return (
    <>
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
    </>
  );
}
