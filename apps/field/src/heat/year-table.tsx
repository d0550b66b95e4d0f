/** The same twelve months as a table. */
import { useText } from '../text/use-text.tsx';
import { monthText } from './figures.ts';
import type { YearRows } from './year-bars.tsx';

interface TableProps {
  readonly rows: YearRows;
  readonly hasCover: boolean;
  readonly value: (si: number) => string;
}

export function YearTable({ rows, hasCover, value }: TableProps) {
  const text = useText();
  return (
    <details className="heat-table">
      <summary>{text.phrase('heat.as-table')}</summary>
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">{text.phrase(hasCover ? 'heat.with-cover' : 'heat.no-cover')}</th>
            {hasCover && <th scope="col">{text.phrase('heat.no-cover')}</th>}
          </tr>
        </thead>
        <tbody>
          {rows.covered.map((one, month) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a month is its place
            <tr key={month}>
              <th scope="row">{monthText(month + 1, text)}</th>
              <td>{value(one)}</td>
              {hasCover && <td>{value(rows.bare[month] ?? 0)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
