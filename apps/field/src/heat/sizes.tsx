/** Heaters of other sizes as steps: how soon each has the water warm, against the wanted hour. Nothing is put in unasked. */
import type { HeatBasinShown, HeaterSizeShown } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { inputText, plateauText, timeText } from './figures.ts';
import { TakeSize } from './take-size.tsx';
import type { Heat } from './use-heat.ts';

interface PartProps {
  readonly heat: Heat;
  readonly basin: HeatBasinShown;
}

/** Slower ones run off the row. */
const MOST_TIMES = 3;

export function Sizes({ heat, basin }: PartProps) {
  const text = useText();
  if (basin.sizes.length === 0) return null;
  const times = basin.sizes.flatMap(({ time }) => time ?? []);
  const most = Math.min(Math.max(...times, basin.wanted ?? 0), (basin.wanted ?? Infinity) * MOST_TIMES);
  const long = Number.isFinite(most) && most > 0 ? most : 1;
  return (
    <section className="heat-sizes">
      <h2>{text.phrase('heat.sizes')}</h2>
      <p className="second">
        {text.phrase(basin.heaters.length > 1 ? 'heat.sizes-each' : 'heat.sizes-say', {
          count: basin.heaters.length,
        })}
      </p>
      <ul>
        {basin.sizes.map((size) => (
          <li key={size.input}>
            <Step heat={heat} basin={basin} size={size} long={long} />
            {heat.tried === size.input && <TakeSize heat={heat} basin={basin} size={size} />}
          </li>
        ))}
      </ul>
    </section>
  );
}

interface StepProps extends PartProps {
  readonly size: HeaterSizeShown;
  readonly long: number;
}

function Step({ heat, basin, size, long }: StepProps) {
  const text = useText();
  const own = size.input === basin.input;
  const tried = heat.tried === size.input;
  const share = size.time === undefined ? 1 : Math.min(1, size.time / long);
  const { wanted } = basin;
  const flag = wanted === undefined ? undefined : Math.min(1, wanted / long);
  return (
    <button
      type="button"
      className={own ? 'heat-step own' : 'heat-step'}
      aria-pressed={tried}
      onClick={() => heat.tryInput(tried || own ? undefined : size.input)}
    >
      <span className="heat-step-name">
        <b>{inputText(size.input, text)}</b>
        {own && <span className="second">{text.phrase('heat.in-plan')}</span>}
      </span>
      <svg className="heat-step-bar" viewBox="0 0 100 28" preserveAspectRatio="none" aria-hidden="true">
        <rect
          className={size.time === undefined ? 'never' : size.inTime === false ? 'late' : 'good'}
          x="0"
          y="4"
          width={Math.max(1, share * 98)}
          height="20"
        />
        {flag !== undefined && <path className="limit" d={`M${flag * 98} 0V28`} />}
      </svg>
      <span className="heat-step-time">
        <b>{size.time === undefined ? text.phrase('heat.never-short') : timeText(size.time, text)}</b>
        <span className="second">{said()}</span>
      </span>
      <span className="sr">{text.phrase('heat.plateau-at', { value: plateauText(size.plateau, text) })}</span>
    </button>
  );

  function said(): string {
    if (!size.holds) return text.phrase('heat.holds-not');
    if (size.inTime === undefined) return text.phrase('heat.holds');
    return text.phrase(size.inTime ? 'heat.in-time' : 'heat.too-late');
  }
}
