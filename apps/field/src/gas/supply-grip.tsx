/** The supply pressure, to be taken hold of where the staircase begins. */
import type { GasHeaterSeen, GasState } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import type { Sliding } from '../ui/slide.ts';
import type { Slide } from '../ui/use-slide.ts';
import { pressure } from './figures.ts';
import type { Stair } from './stair.ts';
import { verdictAt } from './verdict.ts';

/** Two arrows and a knob: it goes up and down. */
export function SupplyKnob({ hold: { x, y } }: { readonly hold: NonNullable<Stair['hold']> }) {
  return (
    <g className="gas-knob" transform={`translate(${x} ${y})`}>
      <path className="gas-knob-arrows" d="M-6 -13h12l-6 -8zM-6 13h12l-6 8z" />
      <circle r="9" />
    </g>
  );
}

interface GripProps {
  readonly hold: NonNullable<Stair['hold']>;
  readonly slide: Slide;
  readonly sliding: Sliding;
  readonly heater: GasHeaterSeen;
  readonly state: GasState;
  /** It was touched and not moved. */
  readonly onTap: () => void;
}

const GRIP = 52;

export function SupplyGrip({ hold, slide, sliding, heater, state, onTap }: GripProps) {
  const text = useText();
  const { collection, id, field } = sliding.at;
  return (
    <div
      className="gas-grip"
      style={{ left: hold.x - GRIP / 2, top: hold.y - GRIP / 2 }}
      role="slider"
      tabIndex={0}
      aria-label={text.path(`${collection}/${id}/${field}`)}
      aria-orientation="vertical"
      aria-valuemin={Math.round(sliding.least)}
      aria-valuemax={Math.round(sliding.most)}
      aria-valuenow={Math.round(sliding.value)}
      aria-valuetext={spoken()}
      {...slide.events(
        sliding,
        (from) => {
          const { value } = sliding;
          return ({ clientY }) => value + (from.clientY - clientY) * hold.perPixel;
        },
        onTap,
      )}
    />
  );

  /** What stands there, what arrives, what is asked, and how that is judged. */
  function spoken(): string {
    const [found, limit] = [heater.pressures[state], state === 'all-off' ? heater.greatest : heater.least];
    const verdict = verdictAt(heater, state);
    return [
      pressure(sliding.value, text),
      found === undefined ? '' : `${text.phrase('gas.at-heater')} ${pressure(found, text, limit)}`,
      limit === undefined
        ? ''
        : `${text.phrase(state === 'all-off' ? 'gas.bears' : 'gas.needs')} ${pressure(limit, text, found)}`,
      verdict === undefined ? '' : text.verdict(verdict),
    ]
      .filter(Boolean)
      .join('; ');
  }
}
