/** Jobs deleted within the last month, each to be brought back. */
import type { Summary } from '../store/database.ts';
import { useShop } from '../store/shop-context.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';

export function DeletedJobs() {
  const shop = useShop();
  const text = useText();
  const gone = (useSignal(shop.listed) ?? []).filter(({ deleted }) => deleted !== undefined);
  if (gone.length === 0) return null;
  return (
    <section aria-labelledby="keeping-deleted">
      <h2 id="keeping-deleted">{text.phrase('keeping-deleted')}</h2>
      <ul className="keeping-deleted">
        {gone.map((job) => (
          <Deleted key={job.doc} job={job} />
        ))}
      </ul>
    </section>
  );
}

function Deleted({ job: { doc, name, deleted = 0 } }: { readonly job: Summary }) {
  const shop = useShop();
  const text = useText();
  const date = new Date(deleted).toLocaleDateString(text.reader.speech.locale);
  const called = name || text.phrase('unnamed');
  return (
    <li>
      <span>
        {called} <span className="second">{text.phrase('deleted-on', { date })}</span>
      </span>
      <button
        type="button"
        className="button plain"
        aria-label={text.phrase('bring-back-name', { name: called })}
        onClick={() => void shop.bringBack(doc)}
      >
        {text.phrase('bring-back')}
      </button>
    </li>
  );
}
