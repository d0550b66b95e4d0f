/** The year month by month: fuel, money or carbon, with the cover and without; a table says the same. */
import {
  type BasinYearStudy,
  type HeatBasinShown,
  type YearMonths,
  type YearStudy,
  yearMonths,
} from '@firstfire/job';
import { useState } from 'react';
import { useMoment } from '../session/use-job.tsx';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { numberText } from './figures.ts';
import type { Year } from './use-year.ts';
import { Waiting } from './waiting.tsx';
import { YearBars } from './year-bars.tsx';
import { YearTable } from './year-table.tsx';

interface YearProps {
  readonly basin: HeatBasinShown;
  readonly year: Year;
}

export function YearPart({ basin, year }: YearProps) {
  const text = useText();
  const { now } = year;
  return (
    <section className="heat-year" aria-busy={now.state === 'marching'}>
      <h2>{text.phrase('heat.year')}</h2>
      {now.state === 'known' ? <Answer basin={basin} study={now.study} /> : <Marching year={year} />}
    </section>
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

function Answer({ basin, study }: { readonly basin: HeatBasinShown; readonly study: YearStudy }) {
  if (study.state === 'unknown') return <Waiting missing={study.missing} issues={[]} asked={basin.missing} />;
  if (study.state === 'impossible') return <Waiting missing={[]} issues={study.issues} />;
  const own = study.basins.find(({ names }) => names.some(({ id }) => id === basin.id));
  return own === undefined ? null : <Months own={own} place={study.place} />;
}

type Measure = keyof YearMonths;

function Months({ own, place }: { readonly own: BasinYearStudy; readonly place: string }) {
  const text = useText();
  const { view } = useMoment();
  const fuel = view.record('gasSupply', '-').reading('fuel')?.value === 'propane' ? 'propane' : 'natural';
  const [asked, ask] = useState<Measure>('fuel');
  const covered = yearMonths(own.covered, fuel);
  const bare = yearMonths(own.bare, fuel);
  const measure = covered[asked] === undefined ? 'fuel' : asked;
  const hasCover = own.covered !== own.bare && sum(covered.fuel) !== sum(bare.fuel);
  const rows = { covered: covered[measure] ?? [], bare: bare[measure] ?? [] };
  const value = valueIn(measure, text);
  return (
    <>
      <fieldset className="heat-choice">
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
        {hasCover && <span>{text.phrase('heat.without', { value: value(sum(rows.bare)) })}</span>}
      </p>
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

export function sum(of: readonly number[]): number {
  return of.reduce((a, b) => a + b, 0);
}

/** Money has no unit: it is that of the prices. */
function valueIn(measure: Measure, text: AppText): (si: number) => string {
  if (measure === 'cost') return (money) => numberText(money, text);
  return (si) => text.show(si, measure === 'fuel' ? 'energy' : 'mass');
}
