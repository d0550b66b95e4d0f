/** The points of a curve: a unit at the head of each column, a row a point, added and taken away. */
import { useText } from '../text/use-text.tsx';
import type { Axes, Row } from './curve.ts';
import { keysOf } from './keys.ts';
import { unitName } from './unit-name.ts';

export interface CurveTableProps {
  readonly rows: readonly Row[];
  readonly unclear: readonly number[];
  readonly axes: Axes;
  readonly onUnits: (units: Axes['units']) => void;
  readonly onRows: (rows: readonly Row[]) => void;
  readonly onAdd: () => void;
}

export function CurveTable({ rows, unclear, axes, onUnits, onRows, onAdd }: CurveTableProps) {
  const text = useText();
  const put = (at: number, part: Partial<Row>): void =>
    onRows(rows.map((row, i) => (i === at ? { ...row, ...part } : row)));
  const [unitX, unitY] = axes.units;
  return (
    <table className="entry-points">
      <thead>
        <tr>
          <th scope="col">
            <UnitChoice axes={axes} at={0} onChange={(unit) => onUnits([unit, unitY])} />
          </th>
          <th scope="col">
            <UnitChoice axes={axes} at={1} onChange={(unit) => onUnits([unitX, unit])} />
          </th>
          <td />
        </tr>
      </thead>
      <tbody>
        {rows.map((row, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
          <tr key={i} className={unclear.includes(i) ? 'odd' : ''}>
            {(['x', 'y'] as const).map((axis) => (
              <td key={axis}>
                <input
                  aria-label={text.phrase(axis === 'x' ? 'point-x' : 'point-y', { number: i + 1 })}
                  inputMode="decimal"
                  autoComplete="off"
                  maxLength={16}
                  value={row[axis]}
                  onChange={(event) => put(i, { [axis]: event.target.value })}
                />
              </td>
            ))}
            <td>
              <button
                type="button"
                className="pad-key"
                aria-label={text.phrase('point-remove', { number: i + 1 })}
                disabled={rows.length <= 1}
                onClick={() => onRows(rows.filter((_, at) => at !== i))}
              >
                ×
              </button>
            </td>
          </tr>
        ))}
        <tr>
          <td colSpan={3}>
            <button type="button" className="button plain" onClick={onAdd}>
              {text.phrase('point-add')}
            </button>
          </td>
        </tr>
      </tbody>
    </table>
  );
}

interface UnitChoiceProps {
  readonly axes: Axes;
  readonly at: 0 | 1;
  readonly onChange: (unit: string) => void;
}

function UnitChoice({ axes, at, onChange }: UnitChoiceProps) {
  const text = useText();
  const kind = axes.kinds[at];
  const unit = axes.units[at];
  const labels = text.reader.speech.figures.labels ?? {};
  return (
    <label>
      {text.phrase(`axis.${kind}`)}
      <select className="text-input" value={unit} onChange={(event) => onChange(event.target.value)}>
        {[...new Set([unit, ...keysOf(kind, unit).units])].map((one) => (
          <option key={one} value={one}>
            {unitName(one, kind, labels)}
          </option>
        ))}
      </select>
    </label>
  );
}
