/** The readings of a line, record by record: what is missing and needed first, then what is known; the rest is folded. */
import type { Reading } from '@firstfire/job';
import { memo, useState } from 'react';
import { Link } from 'wouter';
import { readingText } from '../entry/reading.ts';
import { isEquipment } from '../equipment/library.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { namedValue } from './named-value.ts';
import { type ListedReading, type RecordList, recordLists } from './record-lists.ts';
import { SecondValues } from './second-values.tsx';
import { useFold } from './use-fold.ts';
import './lists.css';

/** A list that fits on a screen or two is not searched. */
const LONG = 24;

export function ReadingList({ line }: { readonly line: string }) {
  const { view, study } = useMoment();
  const text = useText();
  const [typed, setTyped] = useState('');
  const findings = study.lines.find((one) => one.line === line)?.findings ?? [];
  const lists = recordLists(view, line, findings);
  const wanted = typed.trim().toLocaleLowerCase();
  const shown = wanted === '' ? lists : lists.flatMap((list) => matching(list, wanted, text));
  const count = rowsOf(shown);
  return (
    <>
      {rowsOf(lists) > LONG && (
        <input
          type="search"
          className="text-input reading-search"
          aria-label={text.phrase('readings-search')}
          placeholder={text.phrase('readings-search')}
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
      )}
      <p className="second" role="status">
        {wanted !== '' && text.phrase('readings-found', { count })}
      </p>
      {shown.map((list) => (
        <RecordReadings
          key={`${list.collection}/${list.id}`}
          list={list}
          line={line}
          isSearched={wanted !== ''}
        />
      ))}
    </>
  );
}

function rowsOf(lists: readonly RecordList[]): number {
  return lists.reduce(
    (sum, { missing, known, unasked }) => sum + missing.length + known.length + unasked.length,
    0,
  );
}

function titleOf({ collection, name, number }: RecordList, text: AppText): string {
  if (name !== '') return name;
  return number === undefined ? text.record(collection) : `${text.record(collection)} ${number}`;
}

/** All of a record whose name is looked for, else the readings that are. */
function matching(list: RecordList, wanted: string, text: AppText): readonly RecordList[] {
  if (titleOf(list, text).toLocaleLowerCase().includes(wanted)) return [list];
  const only = (rows: readonly ListedReading[]): readonly ListedReading[] =>
    rows.filter(({ collection, field }) =>
      text.field(collection, field).toLocaleLowerCase().includes(wanted),
    );
  const found = {
    ...list,
    missing: only(list.missing),
    known: only(list.known),
    unasked: only(list.unasked),
  };
  return rowsOf([found]) === 0 ? [] : [found];
}

interface RecordProps {
  readonly list: RecordList;
  readonly line: string;
  /** What is looked for is never hidden by a fold. */
  readonly isSearched: boolean;
}

function RecordReadings({ list, line, isSearched }: RecordProps) {
  const { doc } = useSession();
  const text = useText();
  const { collection, id, missing, known, unasked } = list;
  const fold = useFold(`${doc}/${line}/${collection}/${id}`, true);
  return (
    <details
      className="record"
      open={isSearched || fold.open}
      onToggle={isSearched ? undefined : fold.onToggle}
    >
      <summary>
        <h3 className="record-name">{titleOf(list, text)}</h3>
        {missing.length > 0 && (
          <span className="record-missing">{text.phrase('readings-missing', { count: missing.length })}</span>
        )}
      </summary>
      {isEquipment(collection) && (
        <Link className="button plain record-plate" href={`/jobs/${doc}/plate/${collection}/${id}`}>
          {text.phrase('plate-open')}
        </Link>
      )}
      <Rows rows={missing} isNeeded />
      <Rows rows={known} />
      {unasked.length > 0 && <Unasked list={list} line={line} isSearched={isSearched} />}
    </details>
  );
}

function Unasked({ list, line, isSearched }: RecordProps) {
  const { doc } = useSession();
  const text = useText();
  const { collection, id, missing, known, unasked } = list;
  const fold = useFold(`${doc}/${line}/${collection}/${id}/unasked`, false);
  const isAll = missing.length + known.length === 0;
  return (
    <details
      className="unasked"
      open={isSearched || fold.open}
      onToggle={isSearched ? undefined : fold.onToggle}
    >
      <summary>
        {text.phrase(isAll ? 'readings-unasked-all' : 'readings-unasked', { count: unasked.length })}
      </summary>
      <Rows rows={unasked} />
    </details>
  );
}

interface RowsProps {
  readonly rows: readonly ListedReading[];
  readonly isNeeded?: boolean;
}

function Rows({ rows, isNeeded = false }: RowsProps) {
  const { view } = useMoment();
  const text = useText();
  if (rows.length === 0) return null;
  return (
    <ul className="reading-list">
      {rows.map(({ path, collection, id, field, reading }) => (
        <li key={path} data-path={path}>
          <ReadingRow
            path={path}
            name={text.field(collection, field)}
            reading={reading}
            named={reading && namedValue(reading, { collection, field }, { view, text })}
            isNeeded={isNeeded}
          />
          <SecondValues at={{ collection, id, field }} />
        </li>
      ))}
    </ul>
  );
}

interface RowProps {
  readonly path: string;
  readonly name: string;
  readonly reading: Reading | undefined;
  /** What the reading names, where it names something. */
  readonly named: string | undefined;
  readonly isNeeded: boolean;
}

/** A reading that stands as it was is not written anew: there are hundreds of them. */
const ReadingRow = memo(function ReadingRow({ path, name, reading, named, isNeeded }: RowProps) {
  const { doc } = useSession();
  const text = useText();
  return (
    <Link className={isNeeded ? 'reading needed' : 'reading'} href={`/jobs/${doc}/read/${path}`}>
      <span className="reading-name">
        {name}
        {reading !== undefined && <span className="second"> {text.phrase(`how.${reading.how}`)}</span>}
      </span>
      <strong className={reading?.how === 'assumed' ? 'value assumed' : 'value'}>
        {reading === undefined
          ? isNeeded
            ? text.phrase('enter')
            : '—'
          : (named ?? readingText(reading, text))}
      </strong>
    </Link>
  );
});
