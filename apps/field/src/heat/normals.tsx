/** Twelve monthly means typed in: begun from those of the job, else of the place on board, changed where better is known. */
import type { Issue } from '@firstfire/engine';
import { climateOfMonths } from '@firstfire/job';
import { catalog } from '@firstfire/reference';
import { useState } from 'react';
import { figureText } from '../entry/reading.ts';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { climateEdits } from './climate-edits.ts';
import { monthText } from './figures.ts';
import { issueText } from './issue-text.ts';
import {
  COLUMNS,
  type Column,
  meansOfJob,
  type NormalsTyped,
  normalsTyped,
  typedFrom,
} from './normals-typed.ts';

interface NormalsProps {
  readonly place: catalog.climate.ClimatePlace | undefined;
}

export function Normals({ place }: NormalsProps) {
  const text = useText();
  const [isOpen, open] = useState(false);
  return (
    <details className="heat-normals" onToggle={({ currentTarget }) => open(currentTarget.open)}>
      <summary>{text.phrase('heat.type-normals')}</summary>
      {isOpen && <Table place={place} />}
    </details>
  );
}

function Table({ place }: NormalsProps) {
  const text = useText();
  const session = useSession();
  const { marks } = text.reader.speech.figures;
  const { system } = text.reader;
  const [rows, setRows] = useState<NormalsTyped>(() => {
    const { view } = session.now.get();
    const figure = (value: number): string => figureText(value, marks);
    const hasOwn = view.all('climateMonths').length > 0;
    const means = place === undefined ? {} : catalog.climate.normalsOf(place);
    return typedFrom(hasOwn ? meansOfJob(view) : means, figure, system);
  });
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const take = (): void => {
    const made = normalsTyped(rows, { marks, system });
    setIssues(made.ok ? [] : made.issues);
    if (!made.ok) return;
    const where = place === undefined ? {} : { latitude: place.latitude };
    const readings = climateOfMonths({ name: place?.name ?? '', columns: made.value, ...where });
    session.edit(climateEdits(session.now.get().view, readings));
  };
  return (
    <>
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
            <Month key={month} {...{ month, rows, issues }} onTyped={setRows} />
          ))}
        </tbody>
      </table>
      {issues.slice(0, 4).map((issue) => (
        <p key={`${issue.where} ${issue.code}`} className="notice" role="alert">
          {issueText(issue, text, (where) => cellText(where))}
        </p>
      ))}
      <button type="button" className="button" onClick={take}>
        {text.phrase('heat.take-normals')}
      </button>
    </>
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
