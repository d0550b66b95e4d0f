/** Equipment of this device: what is on this plate kept for the next job, or taken from an earlier one. */
import { useState } from 'react';
import { Link } from 'wouter';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { type EquipmentKind, type Item, readingsOf, takeEdits } from './library.ts';
import { type Library, useLibrary } from './use-library.ts';

export interface EquipmentPanelProps {
  readonly kind: EquipmentKind;
  readonly id: string;
  /** Of the record, offered as the name of what is kept. */
  readonly name: string;
}

export function EquipmentPanel(props: EquipmentPanelProps) {
  const text = useText();
  const library = useLibrary();
  return (
    <section className="equipment" aria-label={text.phrase('equipment')}>
      <h2>{text.phrase('equipment')}</h2>
      <p className="second">{text.phrase('equipment-help')}</p>
      {library !== undefined && (
        <>
          <Keep {...props} library={library} />
          <Take {...props} library={library} />
        </>
      )}
      <Link className="button plain" href="/equipment">
        {text.phrase('equipment-all')}
      </Link>
    </section>
  );
}

interface PartProps extends EquipmentPanelProps {
  readonly library: Library;
}

function Keep({ kind, id, name, library }: PartProps) {
  const text = useText();
  const { view } = useMoment();
  const [typed, setTyped] = useState<string | undefined>();
  const [kept, setKept] = useState<string | undefined>();
  const readings = readingsOf(view.record(kind, id), kind);
  const count = Object.keys(readings).length;
  const called = (typed ?? name).trim();
  return (
    <form
      className="equipment-keep"
      onSubmit={(event) => {
        event.preventDefault();
        library.keep([{ kind, name: called, readings }]);
        setKept(called);
      }}
    >
      <label className="entry-field">
        <span>{text.phrase('equipment-name')}</span>
        <input
          className="text-input"
          required
          maxLength={80}
          autoComplete="off"
          value={typed ?? name}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <button type="submit" className="button" disabled={count === 0 || called === ''}>
        {text.phrase('equipment-keep', { count })}
      </button>
      <p role="status">{kept !== undefined && text.phrase('equipment-kept', { name: kept })}</p>
    </form>
  );
}

function Take({ kind, id, library }: PartProps) {
  const text = useText();
  const session = useSession();
  const items = library.items.filter((item) => item.kind === kind);
  const take = (item: Item): void => {
    session.edit(takeEdits(item, session.now.get().view.record(kind, id)));
  };
  if (items.length === 0) return <p className="empty">{text.phrase('equipment-none')}</p>;
  return (
    <ul className="equipment-list">
      {items.map((item) => (
        <li key={item.id}>
          <span>
            <strong>{item.name}</strong>{' '}
            <span className="second">
              {text.phrase('equipment-readings', { count: Object.keys(item.readings).length })}
            </span>
          </span>
          <button type="button" className="button" onClick={() => take(item)}>
            {text.phrase('equipment-take')}
          </button>
        </li>
      ))}
    </ul>
  );
}
