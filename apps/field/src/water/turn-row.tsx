/** The bypass by steps and by number, for gloves and for who does not drag. */
import { useText } from '../text/use-text.tsx';
import { MovePad } from '../ui/move-pad.tsx';
import type { Slide } from '../ui/use-slide.ts';
import { bypassSliding, TURNS, USUAL_TURN } from './bypass.ts';
import { hasHandle } from './drawn.ts';
import { shareText } from './figures.ts';
import { holdsText } from './loop-labels.tsx';
import type { Water } from './use-water.ts';

export function TurnRow({ water: { picture }, slide }: { readonly water: Water; readonly slide: Slide }) {
  const text = useText();
  const { opening, holds } = picture.bypass;
  if (!hasHandle(picture)) return null;
  return (
    <MovePad
      slide={slide}
      sliding={bypassSliding(picture)}
      legend={text.phrase('water.bypass')}
      less={text.phrase('water.less-open')}
      more={text.phrase('water.more-open')}
      steps={TURNS}
      usual={USUAL_TURN}
      stepText={(step) => shareText(step, text)}
    >
      <strong>
        {opening === undefined
          ? text.phrase('water.bypass')
          : text.phrase('water.bypass-at', { share: shareText(opening, text) })}
      </strong>
      <span className="second">{holdsText(holds, text)}</span>
    </MovePad>
  );
}
