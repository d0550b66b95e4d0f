/** Whose climate stands for this place: one on board, months typed in, or a weather file; and the air it is sized for. */
import { catalog } from '@firstfire/reference';
import { useRef } from 'react';
import { Link } from 'wouter';
import { readingOf } from '../entry/reading.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { ReadingLink } from '../ui/reading-link.tsx';
import { climateName, climateSource, monthsSource, type Source } from './climate-edits.ts';
import { ColdAir } from './cold-air.tsx';
import { issueText } from './issue-text.ts';
import { Normals } from './normals.tsx';
import type { WeatherFile } from './use-weather.ts';

interface ClimateProps {
  readonly file: WeatherFile;
}

export function Climate({ file }: ClimateProps) {
  const text = useText();
  const { doc } = useSession();
  const { view } = useMoment();
  const id = view.record('site', '-').reading('climatePlace')?.value;
  const place = catalog.climate.PLACES.find((one) => one.id === id);
  const { weather } = file;
  const isIdle = weather !== undefined && file.hours === undefined;
  const hasMonths = monthsSource(view) !== undefined;
  return (
    <section className="heat-climate">
      <h2>{text.phrase('heat.climate')}</h2>
      {hasMonths && <SourceChoice place={place?.name} />}
      <Link className="heat-row" href={`/jobs/${doc}/read/site/-/climatePlace`}>
        <span>{text.field('site', 'climatePlace')}</span>
        <strong>{place?.name ?? '?'}</strong>
      </Link>
      {hasMonths && view.record('site', '-').reading('latitude') === undefined && (
        <ReadingLink path="site/-/latitude" />
      )}
      {isIdle && (
        <div className="heat-row">
          <span>{text.phrase('heat.file-here', { name: weather.name })}</span>
          <button type="button" className="button plain" onClick={file.rest}>
            {text.phrase('heat.use-file')}
          </button>
        </div>
      )}
      {!file.kept && <p className="second">{text.phrase('heat.not-kept')}</p>}
      <ColdAir hours={file.hours} />
      <Pick file={file} />
      {file.refused !== undefined && <Refused refused={file.refused} />}
      <Normals place={place} />
      <p className="second">{text.phrase('heat.climate-say')}</p>
    </section>
  );
}

/** The place on board, or the months the job holds. */
function SourceChoice({ place }: { readonly place: string | undefined }) {
  const text = useText();
  const session = useSession();
  const { view } = useMoment();
  const months = monthsSource(view) ?? 'typed';
  const source = climateSource(view);
  const choices: readonly (readonly [Source, string])[] = [
    ['bundled', place ?? text.choice('bundled')],
    [months, [text.choice(months), climateName(view)].filter((one) => one !== '').join(': ')],
  ];
  const take = (value: Source): void => {
    session.edit([
      { type: 'set', collection: 'site', field: 'climateFrom', value: readingOf({ value, how: 'told' }) },
    ]);
  };
  return (
    <fieldset className="choice-row heat-source">
      <legend className="sr">{text.field('site', 'climateFrom')}</legend>
      {choices.map(([value, said]) => (
        <label key={value} className={value === source ? 'chosen' : ''}>
          <input type="radio" name="heat-climate" checked={value === source} onChange={() => take(value)} />
          <span>{said}</span>
        </label>
      ))}
    </fieldset>
  );
}

function Pick({ file }: ClimateProps) {
  const text = useText();
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        className="sr"
        type="file"
        accept=".epw,text/plain"
        tabIndex={-1}
        aria-label={text.phrase('heat.open-weather')}
        onChange={({ target }) => {
          const [chosen] = target.files ?? [];
          if (chosen !== undefined) file.take(chosen);
          target.value = '';
        }}
      />
      <button
        type="button"
        className="button plain"
        disabled={file.reading}
        onClick={() => input.current?.click()}
      >
        {text.phrase(file.reading ? 'heat.reading-weather' : 'heat.open-weather')}
      </button>
    </>
  );
}

const SHOWN = 6;

/** What is wrong, line by line. */
function Refused({ refused: { file, issues } }: { readonly refused: NonNullable<WeatherFile['refused']> }) {
  const text = useText();
  return (
    <div className="notice" role="alert">
      <p>{text.phrase('heat.weather-refused', { name: file })}</p>
      <ul>
        {issues.slice(0, SHOWN).map((issue) => (
          <li key={`${issue.where} ${issue.code} ${issue.reason ?? ''}`}>
            {issueText(issue, text, (where) => lineText(where))}
          </li>
        ))}
      </ul>
      {issues.length > SHOWN && <p>{text.phrase('heat.more-lines', { count: issues.length - SHOWN })}</p>}
    </div>
  );

  /** `line.12.dryBulb`. */
  function lineText(where: string): string {
    const [, line, column] = /^line\.(\d+)(?:\.(.+))?$/.exec(where) ?? [];
    if (line === undefined) return where;
    return column === undefined
      ? text.phrase('heat.line', { number: line })
      : text.phrase('heat.line-column', { number: line, column });
  }
}
