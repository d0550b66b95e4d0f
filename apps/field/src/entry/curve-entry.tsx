/** A curve: its points in a table, drawn small as they are typed. */
import type { quantity } from '@firstfire/engine';
import { fieldFact } from '@firstfire/job';
import { issueSentence } from '@firstfire/words';
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import {
  type Axes,
  curveGiven,
  type DecimalMark,
  EMPTY_ROW,
  type Row,
  rowsOf,
  rowsRead,
  unitsOfCurve,
} from './curve.ts';
import { CurvePicture } from './curve-picture.tsx';
import { CurveTable } from './curve-table.tsx';
import type { EntryForm } from './form.ts';
import { WalkKeys } from './walk-keys.tsx';

export interface CurveEntryProps extends EntryForm {
  readonly kinds: readonly [quantity.Kind, quantity.Kind];
}

export function CurveEntry({ at, kinds, before, label, onTry, onNext, onPrevious, row }: CurveEntryProps) {
  const text = useText();
  const { figures, words } = text.reader.speech;
  const mark: DecimalMark = figures.marks?.decimal === ',' ? ',' : '.';
  const [rows, setRows] = useState<readonly Row[]>(() => rowsOf(before, figures.marks));
  const [units, setUnits] = useState<Axes['units']>(() => unitsOfCurve(before, kinds, text.reader.system));
  const { points, unclear } = rowsRead(rows, mark);
  const given = curveGiven(points, { kinds, units });
  const fact =
    given === undefined ? undefined : fieldFact(at.collection, at.field, { how: 'measured', ...given });
  const put = (made: readonly Row[], of: Axes['units'] = units): void => {
    setRows(made);
    onTry(curveGiven(rowsRead(made, mark).points, { kinds, units: of }));
  };
  const relabel = (made: Axes['units']): void => {
    setUnits(made);
    put(rows, made);
  };
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        if (unclear.length === 0) onNext(given);
      }}
    >
      <div className="entry-scroll">
        <CurvePicture points={points} isOutline={kinds[0] === 'length'} label={label} />
        <CurveTable
          rows={rows}
          unclear={unclear}
          axes={{ kinds, units }}
          onUnits={relabel}
          onRows={put}
          onAdd={() => put([...rows, EMPTY_ROW])}
        />
        <div role="status">
          {unclear.length > 0 && <p className="entry-odd">{text.phrase('row-unclear')}</p>}
          {fact?.state === 'wrong' && (
            <p className="entry-odd">
              {fact.issues
                .map((issue) => issueSentence(issue, { words, show: String, name: () => '' }))
                .join(' ')}
            </p>
          )}
        </div>
      </div>
      {row}
      <WalkKeys onPrevious={onPrevious} />
    </form>
  );
}
