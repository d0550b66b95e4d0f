/** What another size would change, and putting it in the plan: one edit, marked as assumed until a plate is read. */
import { quantity } from '@firstfire/engine';
import type { HeatBasinShown, HeaterSizeShown } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';
import { useSession } from '../session/use-job.tsx';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { plateauText, rateText, timeText } from './figures.ts';
import type { Heat } from './use-heat.ts';

interface TakeProps {
  readonly heat: Heat;
  readonly basin: HeatBasinShown;
  readonly size: HeaterSizeShown;
}

export function TakeSize({ heat, basin, size }: TakeProps) {
  const text = useText();
  const session = useSession();
  const take = (): void => {
    const { view } = session.now.get();
    const value = Number(quantity.fromSi(size.input, 'kBtu/h', 'heat-rate').toPrecision(6));
    session.edit(
      basin.heaters.flatMap((element) => {
        const at = { type: 'set', collection: 'heaters', element } as const;
        const plate = view.record('heaters', element).reading('altitudeInput');
        return [
          { ...at, field: 'input', value: readingOf({ value, unit: 'kBtu/h', how: 'assumed' }) },
          // The old plate's input for this altitude says nothing of the new one.
          ...(plate === undefined ? [] : [{ ...at, field: 'altitudeInput', value: null }]),
        ];
      }),
    );
    heat.tryInput(undefined);
  };
  return (
    <div className="heat-take">
      <p>{changesText(basin, size, text)}</p>
      <button type="button" className="button main" onClick={take}>
        {text.phrase('heat.take')}
      </button>
    </div>
  );
}

function changesText({ warmUp, output }: HeatBasinShown, size: HeaterSizeShown, text: AppText): string {
  const time = (si: number | undefined): string =>
    si === undefined ? text.phrase('heat.never-short') : timeText(si, text);
  return text.phrase('heat.would', {
    time: time(size.time),
    now: warmUp === undefined ? '?' : time(warmUp.time),
    plateau: plateauText(size.plateau, text),
    output: rateText(size.output, text),
    before: output === undefined ? '?' : rateText(output, text),
  });
}
