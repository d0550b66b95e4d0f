/** Everything in the library: searched, added to, taken out and in as a table. */
import { useState } from 'react';
import { Link } from 'wouter';
import { readingText } from '../entry/reading.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { CsvPart } from './csv-part.tsx';
import { EquipmentAdd } from './equipment-add.tsx';
import { EquipmentHeader } from './equipment-header.tsx';
import { Gone } from './gone.tsx';
import { EQUIPMENT, type Item } from './library.ts';
import { libraryOf } from './use-library.ts';

/** What tells one from another at a glance. */
const TOLD: Readonly<Record<string, readonly string[]>> = {
  heaters: ['fuel', 'input', 'venting'],
  pumps: ['speedFull', 'curve'],
};

export function EquipmentList() {
  const session = useSession();
  const { view } = useMoment();
  const text = useText();
  const [wanted, setWanted] = useState('');
  const library = libraryOf(session, view);
  const found = library.items.filter((item) =>
    toldOf(item, text).toLocaleLowerCase().includes(folded(wanted)),
  );
  return (
    <>
      <EquipmentHeader back="/" />
      <main className="page narrow equipment-page">
        <h1>{text.phrase('equipment')}</h1>
        <p className="second">{text.phrase('equipment-help')}</p>
        <Gone />
        {library.items.length === 0 && <p className="empty">{text.phrase('equipment-empty')}</p>}
        {library.items.length > 0 && (
          <input
            type="search"
            className="text-input"
            aria-label={text.phrase('equipment-search')}
            placeholder={text.phrase('equipment-search')}
            value={wanted}
            onChange={(event) => setWanted(event.target.value)}
          />
        )}
        <p className="sr" role="status">
          {wanted !== '' && text.phrase('equipment-found', { count: found.length })}
        </p>
        {wanted !== '' && found.length === 0 && (
          <p className="empty">{text.phrase('equipment-none-found')}</p>
        )}
        <Kinds items={found} />
        <EquipmentAdd items={library.items} />
        <section className="equipment-part">
          <h2>{text.phrase('csv')}</h2>
          <p className="second">{text.phrase('csv-help')}</p>
          <CsvPart library={library} />
        </section>
      </main>
    </>
  );
}

function folded(wanted: string): string {
  return wanted.trim().toLocaleLowerCase();
}

function Kinds({ items }: { readonly items: readonly Item[] }) {
  const text = useText();
  return EQUIPMENT.map((kind) => {
    const own = items.filter((item) => item.kind === kind);
    if (own.length === 0) return null;
    return (
      <section key={kind} className="equipment-part" aria-labelledby={`kept-${kind}`}>
        <h2 id={`kept-${kind}`}>{text.phrase(`equipment-kind.${kind}`)}</h2>
        <ul className="equipment-rows">
          {own.map((item) => (
            <li key={item.id}>
              <Row item={item} />
            </li>
          ))}
        </ul>
      </section>
    );
  });
}

function Row({ item }: { readonly item: Item }) {
  const text = useText();
  return (
    <Link className="equipment-row" href={`/equipment/${item.kind}/${item.id}`}>
      <strong>{item.name || text.phrase('unnamed')}</strong>
      <span className="second">
        {[
          ...figures(item, text),
          text.phrase('equipment-readings', { count: Object.keys(item.readings).length }),
        ].join(' · ')}
      </span>
    </Link>
  );
}

function figures({ kind, readings }: Item, text: AppText): readonly string[] {
  return (TOLD[kind] ?? []).flatMap((field) => {
    const reading = readings[field];
    return reading === undefined ? [] : [readingText(reading, text)];
  });
}

/** Everything that a search looks through. */
function toldOf(item: Item, text: AppText): string {
  return [item.name, text.record(item.kind), ...figures(item, text)].join(' ');
}
