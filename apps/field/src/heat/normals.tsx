/** Twelve monthly means typed in: begun from the place on board, changed where better is known. */
import { heat, type Issue } from '@firstfire/engine';
import type { NamedWeather } from '@firstfire/job';
import type { catalog } from '@firstfire/reference';
import { useState } from 'react';
import { figureText } from '../entry/reading.ts';
import { useText } from '../text/use-text.tsx';
import { monthText } from './figures.ts';
import { issueText } from './issue-text.ts';
import { COLUMNS, type Column, type NormalsTyped, normalsTyped, typedFrom } from './normals-typed.ts';

interface NormalsProps {
  readonly place: catalog.climate.ClimatePlace | undefined;
  readonly onTake: (weather: NamedWeather) => void;
}

export function Normals({ place, onTake }: NormalsProps) {
  const text = useText();
  const { marks } = text.reader.speech.figures;
  const { system } = text.reader;
  const [typed, setTyped] = useState<NormalsTyped>();
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  // Sun and cloud of a place follow from where it lies.
  if (place === undefined) return null;
  const rows = typed ?? typedFrom(place, (value) => figureText(value, marks), system);
  const take = (): void => {
    const made = normalsTyped(rows, place, { marks, system });
    const year = made.ok ? heat.hourlyWeather(made.value) : made;
    setIssues(year.ok ? [] : year.issues);
    if (year.ok) onTake({ name: text.phrase('heat.typed-name', { place: place.name }), hours: year.value });
  };
  return (
    <details className="heat-normals">
      <summary>{text.phrase('heat.type-normals')}</summary>
      <table>
        <thead>
          <tr>
            <td />
            {COLUMNS.map(({ name, unit }) => (
              <th key={name} scope="col">
                {text.phrase(`heat-normal.${name}`)}
                <span className="second"> {text.unit(unit(system))}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: 12 }, (_, month) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a month is its place
            <Month key={month} {...{ month, rows, issues }} onTyped={setTyped} />
          ))}
        </tbody>
      </table>
      {issues.slice(0, 4).map((issue) => (
        <p key={`${issue.where} ${issue.code}`} className="notice">
          {issueText(issue, text, (where) => cellText(where))}
        </p>
      ))}
      <button type="button" className="button" onClick={take}>
        {text.phrase('heat.take-normals')}
      </button>
    </details>
  );

  /** `windSpeed.3`, months counted from 1. */
  function cellText(where: string): string {
    const [name = '', month = ''] = where.split('.');
    const column = COLUMNS.find((one) => one.name === name);
    if (column === undefined) return where;
    return `${text.phrase(`heat-normal.${column.name}`)}, ${monthText(Number(month), text)}`;
  }
}

interface MonthProps {
  readonly month: number;
  readonly rows: NormalsTyped;
  readonly issues: readonly Issue[];
  readonly onTyped: (rows: NormalsTyped) => void;
}

function Month({ month, rows, issues, onTyped }: MonthProps) {
  const text = useText();
  const put = (name: Column, value: string): void =>
    onTyped({ ...rows, [name]: rows[name].map((one, i) => (i === month ? value : one)) });
  return (
    <tr>
      <th scope="row">{monthText(month + 1, text, 'short')}</th>
      {COLUMNS.map(({ name }) => (
        <td key={name}>
          <input
            inputMode="decimal"
            autoComplete="off"
            maxLength={10}
            aria-label={`${text.phrase(`heat-normal.${name}`)}, ${monthText(month + 1, text)}`}
            aria-invalid={issues.some(({ where }) => where === `${name}.${month + 1}`)}
            value={rows[name][month] ?? ''}
            onChange={({ target }) => put(name, target.value)}
          />
        </td>
      ))}
    </tr>
  );
}
