/** No basin yet: the ghost of the picture, one sentence, one button. */
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export function Blank() {
  const session = useSession();
  const text = useText();
  return (
    <div className="heat-blank">
      <Ghost />
      <p>{text.phrase('heat.blank')}</p>
      <button
        type="button"
        className="button main"
        onClick={() => session.edit([{ type: 'add', collection: 'basins', element: 'pool' }])}
      >
        {text.phrase('heat.begin')}
      </button>
    </div>
  );
}

/** The warm-up before anything is known of it. */
export function Ghost() {
  return (
    <svg className="heat-ghost" viewBox="0 0 340 190" aria-hidden="true">
      <path d="M30 10V170H330" />
      <path d="M30 160C90 70 190 44 320 38M30 26H320M210 170V20l26 10l-26 10" />
    </svg>
  );
}
