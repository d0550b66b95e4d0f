/** The bypass by steps and by number, for gloves and for who does not drag. */
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { hasHandle } from './drawn.ts';
import { shareText } from './figures.ts';
import { holdsText } from './loop-labels.tsx';
import { BYPASS, type Handle } from './use-handle.ts';
import type { Water } from './use-water.ts';

export function TurnRow({ water: { picture }, handle }: { readonly water: Water; readonly handle: Handle }) {
  const text = useText();
  const { doc } = useSession();
  const { opening, holds } = picture.bypass;
  if (!hasHandle(picture)) return null;
  return (
    <fieldset className="water-turn">
      <legend className="sr">{text.phrase('water.bypass')}</legend>
      <button type="button" className="button" onClick={() => handle.step(-0.05)}>
        <span aria-hidden="true">−</span>
        <span className="sr">{text.phrase('water.less-open')}</span>
      </button>
      <Link
        className="water-number"
        href={`/jobs/${doc}/read/${BYPASS.collection}/${BYPASS.id}/${BYPASS.field}`}
      >
        <strong>
          {opening === undefined
            ? text.phrase('water.bypass')
            : text.phrase('water.bypass-at', { share: shareText(opening, text) })}
        </strong>
        <span className="second">{holdsText(holds, text)}</span>
      </Link>
      <button type="button" className="button" onClick={() => handle.step(0.05)}>
        <span aria-hidden="true">+</span>
        <span className="sr">{text.phrase('water.more-open')}</span>
      </button>
    </fieldset>
  );
}
