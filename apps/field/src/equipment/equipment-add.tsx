/** Something new in the library: what it is and what it is called; its plate is typed on the next page. */
import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { freshId } from '../store/replica.ts';
import { useText } from '../text/use-text.tsx';
import { EQUIPMENT, type EquipmentKind, type Item, keepEdits } from './library.ts';
import { editLibrary } from './use-library.ts';

export function EquipmentAdd({ items }: { readonly items: readonly Item[] }) {
  const session = useSession();
  const text = useText();
  const [, go] = useLocation();
  const [kind, setKind] = useState<EquipmentKind>('heaters');
  const [typed, setTyped] = useState('');
  const name = typed.trim();
  const known = items.find((item) => item.kind === kind && item.name === name);
  const add = (event: FormEvent): void => {
    event.preventDefault();
    const id = known?.id ?? freshId('e');
    const { view } = session.now.get();
    if (known === undefined)
      editLibrary(
        session,
        keepEdits(view, { kind, name, readings: {} }, () => id),
      );
    go(`/equipment/${kind}/${id}`);
  };
  return (
    <form className="equipment-part equipment-keep" onSubmit={add}>
      <h2>{text.phrase('equipment-add')}</h2>
      <fieldset className="how">
        <legend className="sr">{text.phrase('equipment-which')}</legend>
        {EQUIPMENT.map((one) => (
          <label key={one} className={one === kind ? 'chosen' : ''}>
            <input type="radio" name="equipment-kind" checked={one === kind} onChange={() => setKind(one)} />
            <span className="capital">{text.record(one)}</span>
          </label>
        ))}
      </fieldset>
      <label className="entry-field">
        <span>{text.phrase('equipment-called')}</span>
        <input
          className="text-input"
          required
          maxLength={80}
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <p role="status">{known !== undefined && text.phrase('equipment-there', { name })}</p>
      <button type="submit" className="button main" disabled={name === ''}>
        {text.phrase(known === undefined ? 'equipment-add' : 'equipment-open')}
      </button>
    </form>
  );
}
