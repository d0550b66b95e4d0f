/** The nameplate of a heater or a pump: a picture of a plate with its fields where plates have them, each a tap to enter. */
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { PhotoButton } from '../entry/photo-button.tsx';
import { beginRound } from '../entry/round.ts';
import { usePhotos } from '../entry/use-photos.ts';
import { EquipmentPanel } from '../equipment/equipment-panel.tsx';
import { type EquipmentKind, isEquipment, nameOf } from '../equipment/library.ts';
import { PLATES } from '../equipment/plate.ts';
import { PlateFields } from '../equipment/plate-fields.tsx';
import { PlatePlace } from '../equipment/plate-picture.tsx';
import { measureNext } from '../next/measure-next.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import '../entry/pad.css';
import '../entry/entry.css';
import '../entry/lists.css';
import '../equipment/equipment.css';

export interface NameplatePageProps {
  readonly collection: string;
  readonly id: string;
}

export default function NameplatePage({ collection, id }: NameplatePageProps) {
  const { doc } = useSession();
  const { view } = useMoment();
  const text = useText();
  const photos = usePhotos(`${collection}/${id}/plate`);
  if (!isEquipment(collection)) return <p className="page">{text.phrase('no-such-reading')}</p>;
  const name = nameOf(view.record(collection, id)) || text.record(collection);
  // Both plates of a swap are read on its walk.
  const isSwap = view.record('job', '-').reading('kind')?.value === 'swap' && collection === 'heaters';
  const up = isSwap ? 'walk' : collection === 'pumps' ? 'water' : 'heat';
  return (
    <>
      <JobHeader back={`/jobs/${doc}/${up}`} />
      <SixColumns strip />
      <main className="page narrow plate-page">
        <header className="plate-head">
          <PlatePlace kind={collection} />
          <div>
            <h1>{text.phrase('plate-of', { name })}</h1>
            <p className="second">{text.phrase(`plate-where.${collection}`)}</p>
            <PhotoButton photos={photos} />
          </div>
        </header>
        <Link className="button plate-all" href={`/jobs/${doc}/plate/${collection}/${id}/all`}>
          {text.phrase('plate-all')}
        </Link>
        <Fields kind={collection} id={id} />
        <EquipmentPanel kind={collection} id={id} name={name} />
      </main>
    </>
  );
}

interface FieldsProps {
  readonly kind: EquipmentKind;
  readonly id: string;
}

function Fields({ kind, id }: FieldsProps) {
  const { doc } = useSession();
  const { study } = useMoment();
  const text = useText();
  const { plate, instructions } = PLATES[kind] ?? { plate: [], instructions: [] };
  const back = `/jobs/${doc}/plate/${kind}/${id}`;
  const pathOf = (field: string): string => `${kind}/${id}/${field}`;
  const printed = plate.flatMap(({ fields }) => fields);
  const begin = (fields: readonly string[]): void =>
    beginRound({ doc, back, paths: fields.map(pathOf) }, 'nameplate');
  const waiting = new Map(measureNext(study).map(({ path, settles }) => [path, settles]));
  const wanted = [...waiting.keys()].flatMap((path) =>
    [...printed, ...instructions].filter((field) => pathOf(field) === path),
  );
  const [first] = wanted;
  return (
    <>
      {first !== undefined && (
        <Link
          className="button main"
          href={`/jobs/${doc}/read/${pathOf(first)}`}
          onClick={() => begin(wanted)}
        >
          {text.phrase('plate-wanted', { count: wanted.length })}
        </Link>
      )}
      <PlateFields
        kind={kind}
        id={id}
        hrefOf={(field) => `/jobs/${doc}/read/${pathOf(field)}`}
        onOpen={(field) => begin(printed.includes(field) ? printed : instructions)}
        settlesOf={(field) => waiting.get(pathOf(field)) ?? 0}
      />
    </>
  );
}
