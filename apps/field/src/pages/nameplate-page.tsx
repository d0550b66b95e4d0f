/** The nameplate of a heater or a pump: a picture of a plate with its fields where plates have them, each a tap to enter. */
import { SixColumns } from '../columns/six-columns.tsx';
import { PhotoButton } from '../entry/photo-button.tsx';
import { usePhotos } from '../entry/use-photos.ts';
import { EquipmentPanel } from '../equipment/equipment-panel.tsx';
import { isEquipment, nameOf } from '../equipment/library.ts';
import { PLATES } from '../equipment/plate.ts';
import { PlateCell } from '../equipment/plate-cell.tsx';
import { PlateFrame, PlatePlace } from '../equipment/plate-picture.tsx';
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
        <Fields collection={collection} id={id} />
        <EquipmentPanel kind={collection} id={id} name={name} />
      </main>
    </>
  );
}

function Fields({ collection, id }: NameplatePageProps) {
  const { doc } = useSession();
  const text = useText();
  const { plate, instructions } = PLATES[collection] ?? { plate: [], instructions: [] };
  const back = `/jobs/${doc}/plate/${collection}/${id}`;
  const pathOf = (field: string): string => `${collection}/${id}/${field}`;
  const printed = plate.flatMap(({ fields }) => fields).map(pathOf);
  const told = instructions.map(pathOf);
  return (
    <>
      <PlateFrame label={text.phrase('plate')}>
        {plate.map(({ part, fields }) => (
          <section key={part} className="plate-part" aria-label={text.phrase(`plate-part.${part}`)}>
            <h2>{text.phrase(`plate-part.${part}`)}</h2>
            <div className="plate-cells">
              {fields.map((field) => (
                <PlateCell key={field} at={{ collection, id, field }} round={{ doc, back, paths: printed }} />
              ))}
            </div>
          </section>
        ))}
      </PlateFrame>
      <section className="plate-instructions">
        <h2>{text.phrase('plate-instructions')}</h2>
        <div className="plate-cells">
          {instructions.map((field) => (
            <PlateCell key={field} at={{ collection, id, field }} round={{ doc, back, paths: told }} />
          ))}
        </div>
      </section>
    </>
  );
}
