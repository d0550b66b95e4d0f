/** One heater or pump of the library: its plate, every field a tap to type; used in a job, or taken out. */
import { Suspense } from 'react';
import { Link, useLocation } from 'wouter';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { EquipmentHeader } from './equipment-header.tsx';
import { removed } from './gone.tsx';
import { type EquipmentKind, nameOf, readingsOf } from './library.ts';
import { PlateFields } from './plate-fields.tsx';
import { PlatePlace } from './plate-picture.tsx';
import { UseInJob } from './use-in-job.tsx';
import { editLibrary } from './use-library.ts';

export interface EquipmentItemProps {
  readonly kind: EquipmentKind;
  readonly id: string;
}

export function EquipmentItem({ kind, id }: EquipmentItemProps) {
  const { view } = useMoment();
  const text = useText();
  const isThere = view.all(kind).some((one) => one.id === id);
  const name = nameOf(view.record(kind, id)) || text.phrase('unnamed');
  return (
    <>
      <EquipmentHeader back="/equipment" />
      <main className="page narrow plate-page">
        {isThere ? (
          <Plate kind={kind} id={id} name={name} />
        ) : (
          <>
            <h1>{text.phrase('equipment')}</h1>
            <p className="empty">{text.phrase('equipment-gone')}</p>
          </>
        )}
      </main>
    </>
  );
}

function Plate({ kind, id, name }: EquipmentItemProps & { readonly name: string }) {
  const { view } = useMoment();
  const text = useText();
  const readings = readingsOf(view.record(kind, id), kind);
  return (
    <>
      <header className="plate-head">
        <PlatePlace kind={kind} />
        <div>
          <h1>{name}</h1>
          <p className="second">
            {text.record(kind)} · {text.phrase('equipment-readings', { count: Object.keys(readings).length })}
          </p>
          <Link className="button plain" href={`/equipment/${kind}/${id}/name`}>
            {text.phrase('equipment-rename')}
          </Link>
        </div>
      </header>
      <PlateFields kind={kind} id={id} hrefOf={(field) => `/equipment/${kind}/${id}/${field}`} />
      <Suspense>
        <UseInJob item={{ kind, id, name, readings }} />
      </Suspense>
      <Delete kind={kind} id={id} name={name} />
    </>
  );
}

function Delete({ kind, id, name }: EquipmentItemProps & { readonly name: string }) {
  const session = useSession();
  const text = useText();
  const [, go] = useLocation();
  return (
    <section className="equipment">
      <button
        type="button"
        className="button plain"
        onClick={() => {
          editLibrary(session, [{ type: 'remove', collection: kind, element: id }]);
          removed.set({ name, version: session.now.get().version });
          go('/equipment');
        }}
      >
        {text.phrase('equipment-remove', { name })}
      </button>
    </section>
  );
}
