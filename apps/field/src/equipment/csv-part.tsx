/** The library as a file: written whole; read whole or not at all, with every bad row named and what would be right. */
import { issueSentence } from '@firstfire/words';
import { useRef, useState } from 'react';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { COLUMNS, type RowFault, readTable, tableOf } from './csv.ts';
import { decoded } from './decoded.ts';
import { EQUIPMENT } from './library.ts';
import type { Library } from './use-library.ts';

type Outcome =
  | { readonly state: 'none' }
  | { readonly state: 'taken'; readonly count: number }
  | { readonly state: 'refused'; readonly faults: readonly RowFault[] };

const MOST_SHOWN = 12;

export function CsvPart({ library }: { readonly library: Library }) {
  const text = useText();
  const input = useRef<HTMLInputElement>(null);
  const [outcome, setOutcome] = useState<Outcome>({ state: 'none' });
  const read = async (file: File): Promise<void> => {
    const table = readTable(decoded(await file.arrayBuffer()));
    if (table.ok) library.keep(table.items);
    setOutcome(
      table.ok ? { state: 'taken', count: table.items.length } : { state: 'refused', faults: table.faults },
    );
  };
  return (
    <div className="equipment-csv">
      <button type="button" className="button plain" onClick={() => save(tableOf(library.items))}>
        {text.phrase('csv-out')}
      </button>
      <button type="button" className="button plain" onClick={() => input.current?.click()}>
        {text.phrase('csv-in')}
      </button>
      <input
        ref={input}
        type="file"
        accept=".csv,text/csv"
        hidden
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          event.target.value = '';
          if (file !== undefined) void read(file);
        }}
      />
      <div role="status">
        {outcome.state === 'taken' && <p>{text.phrase('csv-taken', { count: outcome.count })}</p>}
        {outcome.state === 'refused' && <Faults faults={outcome.faults} />}
      </div>
    </div>
  );
}

function Faults({ faults }: { readonly faults: readonly RowFault[] }) {
  const text = useText();
  return (
    <div className="notice">
      <p>{text.phrase('csv-refused', { count: faults.length })}</p>
      <ul>
        {faults.slice(0, MOST_SHOWN).map((fault) => (
          <li key={JSON.stringify(fault)}>{faultText(fault, text)}</li>
        ))}
      </ul>
      {faults.length > MOST_SHOWN && <p>{text.phrase('csv-more', { count: faults.length - MOST_SHOWN })}</p>}
    </div>
  );
}

function faultText(fault: RowFault, text: AppText): string {
  const { words } = text.reader.speech;
  const told = {
    row: fault.row,
    found: 'found' in fault ? fault.found : '',
    column: 'column' in fault ? fault.column : '',
    kinds: EQUIPMENT.join(', '),
    columns: COLUMNS.slice(0, 6).join(', '),
    record: 'kind' in fault ? text.record(fault.kind) : '',
  };
  if (fault.fault !== 'cell') return text.phrase(`csv-fault.${fault.fault}`, told);
  const why = fault.issues.map((issue) =>
    issueSentence(issue, {
      words,
      name: () => '',
      show: (value, kind) => (kind === undefined ? String(value) : text.show(value, kind)),
    }),
  );
  return text.phrase('csv-fault.cell', { ...told, why: why.join(' ') });
}

function save(table: string): void {
  const url = URL.createObjectURL(new Blob([table], { type: 'text/csv;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = 'equipment.csv';
  link.click();
  URL.revokeObjectURL(url);
}
