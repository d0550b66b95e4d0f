/** Air the heaters are sized for: the mean of the coldest month of use, or one that somebody decides, such as a cold hour's. */
import { heat, quantity } from '@firstfire/engine';
import type { NamedWeather } from '@firstfire/job';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { readingOf, readingText } from '../entry/reading.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { shareText, temperatureText } from './figures.ts';

export function ColdAir({ hours }: { readonly hours: NamedWeather | undefined }) {
  const text = useText();
  const session = useSession();
  const { view } = useMoment();
  const decided = view.record('site', '-').reading('designTemperature');
  const cold = useMemo(
    () => (hours === undefined ? undefined : heat.heatingDryBulb(hours.hours, heat.COLD_HOURS_ABOVE)),
    [hours],
  );
  const set = (value: ReturnType<typeof readingOf> | null): void => {
    session.edit([{ type: 'set', collection: 'site', field: 'designTemperature', value }]);
  };
  const size = (si: number): void => {
    const unit = quantity.preferredUnit('temperature', text.reader.system);
    const value = Number(quantity.fromSi(si, unit, 'temperature').toFixed(1));
    set(readingOf({ value, unit, how: 'told' }));
  };
  return (
    <>
      <Link className="heat-row" href={`/jobs/${session.doc}/read/site/-/designTemperature`}>
        <span>{text.field('site', 'designTemperature')}</span>
        <strong>
          {decided === undefined ? text.phrase('heat.mean-of-month') : readingText(decided, text)}
        </strong>
      </Link>
      {decided !== undefined && (
        <button type="button" className="button plain" onClick={() => set(null)}>
          {text.phrase('heat.size-for-mean')}
        </button>
      )}
      {decided === undefined && cold !== undefined && (
        <div className="heat-row">
          <span>
            {text.phrase('heat.cold-hours', {
              share: shareText(heat.COLD_HOURS_ABOVE, text),
              air: temperatureText(cold, text),
            })}
          </span>
          <button type="button" className="button plain" onClick={() => size(cold)}>
            {text.phrase('heat.size-for-cold')}
          </button>
        </div>
      )}
    </>
  );
}
