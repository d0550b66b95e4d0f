/** The year month by month: fuel, money or carbon, with the cover and without; a table says the same. */
import {
  type BasinYearStudy,
  type HeatBasinShown,
  type YearMonths,
  type YearStudy,
  yearMonths,
} from '@firstfire/job';
import { type ReactNode, useState } from 'react';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { Compare } from './compare.tsx';
import { Cover } from './cover.tsx';
import type { Year } from './use-year.ts';
import { Waiting } from './waiting.tsx';
import { YearBars } from './year-bars.tsx';
import { sum, valueIn } from './year-figures.ts';
import { YearTable } from './year-table.tsx';

interface YearProps {
  readonly basin: HeatBasinShown;
  readonly year: Year;
}

export function YearPart({ basin, year }: YearProps) {
  const text = useText();
  const { now } = year;
  const isBusy = now.state === 'marching' || (now.state === 'known' && !now.fresh);
  return (
    <section className="heat-year" aria-busy={isBusy}>
      <h2>{text.phrase('heat.year')}</h2>
      <Cover basin={basin} />
      {now.state === 'known' ? (
        <Answer basin={basin} study={now.study} aside={<Again year={year} />} />
      ) : (
        <Marching year={year} />
      )}
    </section>
  );
}

/** Beside a figure that something has overtaken: that the next is on its way, or that nobody works it out. */
function Again({ year: { now, begin } }: { readonly year: Year }) {
  const text = useText();
  const isOld = now.state === 'known' && !now.fresh;
  const isIdle = now.state === 'known' && now.meanwhile !== 'marching';
  return (
    <span className="heat-again second" role="status">
      {isOld && !isIdle && text.phrase('heat.marching-again')}
      {isOld && isIdle && (
        <button type="button" className="button plain" onClick={begin}>
          {text.phrase('heat.march')}
        </button>
      )}
    </span>
  );
}

function Marching({ year: { now, stop, begin } }: { readonly year: Year }) {
  const text = useText();
  const idle = now.state === 'stopped' || now.state === 'broken';
  return (
    <div className="heat-marching">
      {now.state === 'broken' && <p className="notice">{text.phrase('heat.year-broken')}</p>}
      {!idle && (
        <>
          <p>{text.phrase('heat.marching')}</p>
          <progress
            aria-label={text.phrase('heat.marching')}
            {...(now.state === 'marching' && now.of > 0 ? { value: now.done, max: now.of } : {})}
          />
        </>
      )}
      <button type="button" className="button plain" onClick={idle ? begin : stop}>
        {text.phrase(idle ? 'heat.march' : 'heat.stop')}
      </button>
    </div>
  );
}

interface AnswerProps {
  readonly basin: HeatBasinShown;
  readonly study: YearStudy;
  /** Beside the figure of the year. */
  readonly aside: ReactNode;
}

function Answer({ basin, study, aside }: AnswerProps) {
  if (study.state === 'unknown') return <Waiting missing={study.missing} issues={[]} asked={basin.missing} />;
  if (study.state === 'impossible') return <Waiting missing={[]} issues={study.issues} />;
  const own = study.basins.find(({ names }) => names.some(({ id }) => id === basin.id));
  return own === undefined ? null : <Months own={own} place={study.place} aside={aside} />;
}

interface MonthsProps extends Pick<AnswerProps, 'aside'> {
  readonly own: BasinYearStudy;
  readonly place: string;
}

function Months({ own, place, aside }: MonthsProps) {
  const text = useText();
  const { view } = useMoment();
  const fuel = view.record('gasSupply', '-').reading('fuel')?.value === 'propane' ? 'propane' : 'natural';
  const [asked, ask] = useState<keyof YearMonths>('fuel');
  const covered = yearMonths(own.covered, fuel);
  const bare = yearMonths(own.bare, fuel);
  const measure = covered[asked] === undefined ? 'fuel' : asked;
  const hasCover = own.covered !== own.bare && sum(covered.fuel) !== sum(bare.fuel);
  const rows = { covered: covered[measure] ?? [], bare: bare[measure] ?? [] };
  const value = valueIn(measure, text);
  return (
    <>
      <fieldset className="choice-row">
        <legend className="sr">{text.phrase('heat.year')}</legend>
        {(['fuel', 'cost', 'carbon'] as const).map((one) => (
          <label key={one} className={one === measure ? 'chosen' : covered[one] === undefined ? 'none' : ''}>
            <input
              type="radio"
              name="heat-measure"
              checked={one === measure}
              disabled={covered[one] === undefined}
              onChange={() => ask(one)}
            />
            {text.phrase(`heat-year.${one}`)}
          </label>
        ))}
      </fieldset>
      {covered.cost === undefined && <Waiting missing={['gasSupply/-/price']} issues={[]} />}
      <p className="heat-line">
        <strong>{text.phrase('heat.a-year', { value: value(sum(rows.covered)) })}</strong>
        {aside}
      </p>
      {hasCover && <Compare covered={covered} bare={bare} />}
      <YearBars rows={rows} hasCover={hasCover} />
      <YearTable rows={rows} hasCover={hasCover} value={value} />
      <p className="second">
        {text.phrase('heat.year-of', { place })}
        {own.notes.map((note) => ` ${text.phrase(`heat-note.${note}`)}`)}
        {measure === 'carbon' && ` ${text.phrase('heat.carbon-say')}`}
      </p>
    </>
  );
}
