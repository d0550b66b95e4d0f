/** One field of a plate in the library, typed with the same keys as in a job; on to the next of the plate. */
import { useLocation } from 'wouter';
import { EntryForm } from '../entry/entry-form.tsx';
import { EntryHead } from '../entry/entry-head.tsx';
import { readingOf } from '../entry/reading.ts';
import { type FieldAt, fieldOf } from '../entry/understood.ts';
import type { Given } from '../entry/use-quantity.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { EquipmentHeader } from './equipment-header.tsx';
import { LIBRARY, nameOf } from './library.ts';
import { equipmentFields } from './plate.ts';
import { editLibrary } from './use-library.ts';

export function EquipmentEntry({ at }: { readonly at: FieldAt }) {
  const { collection, id, field } = at;
  const session = useSession();
  const { view } = useMoment();
  const text = useText();
  const [, go] = useLocation();
  const spec = fieldOf(at);
  const item = `/equipment/${collection}/${id}`;
  const fields = equipmentFields(collection);
  const place = fields.indexOf(field);
  if (spec === undefined || spec.type === 'substitute')
    return <p className="page">{text.phrase('no-such-reading')}</p>;
  const open = (to: string | undefined): void => {
    if (to === undefined) go(item);
    else go(`${item}/${to}`, { replace: true });
  };
  const next = (given: Given | undefined): void => {
    if (given !== undefined)
      editLibrary(session, [{ type: 'set', collection, element: id, field, value: kept(at, given) }]);
    open(place < 0 ? undefined : fields[place + 1]);
  };
  const before = place > 0 ? fields[place - 1] : undefined;
  return (
    <div className="entry-screen">
      <EquipmentHeader back={item} />
      <main className="entry-page">
        <EntryHead
          at={at}
          of={nameOf(view.record(collection, id)) || text.record(collection)}
          walk={
            place < 0
              ? text.phrase('plate')
              : text.phrase('walk-place', {
                  number: place + 1,
                  total: fields.length,
                  station: text.phrase('plate'),
                })
          }
          skipped={undefined}
          onAskAgain={() => {}}
        />
        <EntryForm
          at={at}
          spec={spec}
          doc={LIBRARY}
          before={view.record(collection, id).reading(field)}
          label={text.field(collection, field)}
          offered={undefined}
          onTry={ignore}
          onNext={next}
          onPrevious={before === undefined ? undefined : () => open(before)}
          row={() => null}
        />
      </main>
    </div>
  );
}

function ignore(): void {}

/** Whatever an instrument was at hand for elsewhere: what is kept here stands on a plate. */
function kept({ field }: FieldAt, { value, unit, typed }: Given) {
  return readingOf({
    value,
    how: field === 'name' ? 'told' : 'nameplate',
    ...(unit === undefined ? {} : { unit }),
    ...(typed === undefined ? {} : { typed }),
  });
}
