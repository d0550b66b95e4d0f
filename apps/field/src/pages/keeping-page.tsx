/** Where the work is: on this device alone, or in files as well; files out and in. */
import type { FileIssue } from '@firstfire/job';
import { fill } from '@firstfire/words';
import { useState } from 'react';
import { saveFile } from '../jobs/save-file.ts';
import { useShop } from '../store/shop-context.ts';
import { useSignal } from '../store/use-signal.ts';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { BackLink } from '../ui/back-link.tsx';
import '../jobs/jobs.css';

type Outcome = { readonly good: boolean; readonly said: string };

export default function KeepingPage() {
  const shop = useShop();
  const text = useText();
  const jobs = useSignal(shop.listed) ?? [];
  const [outcome, setOutcome] = useState<Outcome>();
  const saveAll = async (): Promise<void> => {
    const { bundleText } = await import('../store/portable.ts');
    saveFile(`firstfire-${new Date().toISOString().slice(0, 10)}.json`, await bundleText(shop.storage));
    setOutcome({ good: true, said: text.phrase('exported', { count: jobs.length }) });
  };
  const bringIn = async (file: File): Promise<void> => {
    const { readPortable } = await import('../store/portable.ts');
    const read = readPortable(await file.text());
    if (!read.ok) {
      setOutcome({ good: false, said: read.issues.map((issue) => issueText(issue, text)).join(' ') });
      return;
    }
    for (const { doc, operations } of read.jobs) await shop.take(doc, operations);
    setOutcome({ good: true, said: text.phrase('brought-in', { count: read.jobs.length }) });
  };
  const refused = (error: unknown): void => {
    setOutcome({
      good: false,
      said: text.phrase('not-kept', { reason: error instanceof Error ? error.name : '' }),
    });
  };
  return (
    <main className="page narrow">
      <BackLink href="/" />
      <h1>{text.phrase('keeping')}</h1>
      <p>{text.phrase('keeping-says', { count: jobs.length })}</p>
      <div className="keeping-parts">
        <button type="button" className="button main" onClick={() => void saveAll().catch(refused)}>
          {text.phrase('export-all')}
        </button>
        <label className="button file-label">
          {text.phrase('import')}
          <input
            className="file-input"
            type="file"
            accept=".json,application/json"
            onChange={(event) => {
              const [file] = event.target.files ?? [];
              if (file !== undefined) void bringIn(file).catch(refused);
              event.target.value = '';
            }}
          />
        </label>
        {outcome !== undefined && (
          <p className={outcome.good ? 'empty' : 'notice'} role="status">
            {outcome.said}
          </p>
        )}
      </div>
    </main>
  );
}

function issueText({ code, place, found, expected }: FileIssue, text: AppText): string {
  const said = fill(text.reader.speech.words.phrases[`file.${code}`] ?? code, {
    found: String(found ?? ''),
    expected: String(expected ?? ''),
    place: place.path,
  });
  return text.phrase('file-place', { line: place.line, column: place.column, said });
}
