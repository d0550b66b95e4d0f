/** Whose climate stands for this place: one on board, or a weather file of its own. */
import { catalog } from '@firstfire/reference';
import { useRef } from 'react';
import { Link } from 'wouter';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
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
  return (
    <section className="heat-climate">
      <h2>{text.phrase('heat.climate')}</h2>
      <Link className="heat-row" href={`/jobs/${doc}/read/site/-/climatePlace`}>
        <span>{text.field('site', 'climatePlace')}</span>
        <strong>{place?.name ?? '?'}</strong>
      </Link>
      {file.weather !== undefined && (
        <div className="heat-row">
          <span>
            {text.phrase('heat.own-weather', { name: file.weather.name })}
            {!file.kept && <span className="second"> {text.phrase('heat.not-kept')}</span>}
          </span>
          <button type="button" className="button plain" onClick={() => file.put(undefined)}>
            {text.phrase('heat.drop-weather')}
          </button>
        </div>
      )}
      <Pick file={file} />
      {file.refused !== undefined && <Refused refused={file.refused} />}
      <Normals place={place} onTake={file.put} />
      <p className="second">{text.phrase('heat.weather-say')}</p>
    </section>
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
