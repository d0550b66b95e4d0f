/** Files out and in. */
import type { FileIssue } from '@firstfire/job';
import { fill } from '@firstfire/words';
import { useRef, useState } from 'react';
import { saveFile } from '../jobs/save-file.ts';
import type { Shop } from '../store/shop.ts';
import { useShop } from '../store/shop-context.ts';
import type { BroughtIn } from '../store/take-out.ts';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';

interface Outcome {
  readonly good: boolean;
  readonly said: string;
}

export function Files() {
  const shop = useShop();
  const text = useText();
  const [outcomes, setOutcomes] = useState<readonly Outcome[]>([]);
  const run = (work: () => Promise<readonly Outcome[]>): void => {
    work().then(setOutcomes, (error: unknown) =>
      setOutcomes([
        { good: false, said: text.phrase('not-kept', { reason: error instanceof Error ? error.name : '' }) },
      ]),
    );
  };
  return (
    <section aria-labelledby="keeping-files">
      <h2 id="keeping-files">{text.phrase('keeping-files')}</h2>
      <p className="second">{text.phrase('keeping-files-help')}</p>
      <div className="keeping-buttons">
        <button type="button" className="button main" onClick={() => run(() => takeOut(shop, text))}>
          {text.phrase('export-all')}
        </button>
        <FileButton onFiles={(files) => run(() => takeIn(files, shop, text))} />
      </div>
      <div role="status">
        {outcomes.map(({ good, said }) => (
          <p key={said} className={good ? 'keeping-outcome' : 'notice'}>
            {said}
          </p>
        ))}
      </div>
    </section>
  );
}

/** A button that asks for files; the input itself stays out of sight, and is reached by the button alone. */
function FileButton({ onFiles }: { readonly onFiles: (files: readonly File[]) => void }) {
  const text = useText();
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className="button" onClick={() => input.current?.click()}>
        {text.phrase('import')}
      </button>
      <input
        ref={input}
        hidden
        type="file"
        multiple
        accept=".json,application/json"
        onChange={({ target }) => {
          onFiles([...(target.files ?? [])]);
          target.value = '';
        }}
      />
    </>
  );
}

async function takeOut(shop: Shop, text: AppText): Promise<readonly Outcome[]> {
  const { everything } = await import('../store/take-out.ts');
  const { text: content, counts } = await everything(shop);
  saveFile(`firstfire-${new Date().toISOString().slice(0, 10)}.json`, content);
  await shop.exported(counts);
  const count = (shop.listed.get() ?? []).length;
  return [{ good: true, said: text.phrase('exported', { count }) }];
}

async function takeIn(files: readonly File[], shop: Shop, text: AppText): Promise<readonly Outcome[]> {
  const { bringIn } = await import('../store/take-out.ts');
  const outcomes: Outcome[] = [];
  for (const file of files) outcomes.push(outcomeOf(file.name, await bringIn(file, shop), text));
  return outcomes;
}

function outcomeOf(name: string, brought: BroughtIn, text: AppText): Outcome {
  if (!brought.ok)
    return { good: false, said: text.phrase('file-refused', { name, said: issueText(brought.issue, text) }) };
  const { jobs, added, leftOut } = brought;
  const said =
    added === 0
      ? text.phrase('brought-nothing', { name })
      : text.phrase('brought-in', { name, jobs, count: added });
  return {
    good: leftOut === 0,
    said: leftOut === 0 ? said : `${said} ${text.phrase('brought-left-out', { count: leftOut })}`,
  };
}

function issueText({ code, place, found, expected }: FileIssue, text: AppText): string {
  const said = fill(text.reader.speech.words.phrases[`file.${code}`] ?? code, {
    found: String(found ?? ''),
    expected: String(expected ?? ''),
    place: place.path,
  });
  return text.phrase('file-place', { line: place.line, column: place.column, said });
}
