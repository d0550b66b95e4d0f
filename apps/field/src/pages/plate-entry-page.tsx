/** A nameplate entered in one go: its fields on one screen, what settles most first. */
import { useEffect, useMemo, useRef } from 'react';
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { PhotoButton } from '../entry/photo-button.tsx';
import { stickHow, sticky } from '../entry/sticky.ts';
import { usePhotos } from '../entry/use-photos.ts';
import { isEquipment, nameOf } from '../equipment/library.ts';
import { QuickList } from '../flows/quick-list.tsx';
import { plateOrder } from '../next/plate-order.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import '../entry/pad.css';
import '../entry/entry.css';
import '../entry/lists.css';

export interface PlateEntryProps {
  readonly collection: string;
  readonly id: string;
}

export default function PlateEntryPage({ collection, id }: PlateEntryProps) {
  const { doc } = useSession();
  const now = useMoment();
  const text = useText();
  const photos = usePhotos(`${collection}/${id}/plate`);
  const begun = useRef(now);
  const paths = useMemo(() => plateOrder(begun.current, collection, id), [collection, id]);
  useAsNameplate();
  if (!isEquipment(collection)) return <p className="page">{text.phrase('no-such-reading')}</p>;
  const name = nameOf(now.view.record(collection, id)) || text.record(collection);
  const isSwap = now.view.record('job', '-').reading('kind')?.value === 'swap';
  const back = isSwap ? `/jobs/${doc}/walk` : `/jobs/${doc}/plate/${collection}/${id}`;
  return (
    <>
      <JobHeader back={back} />
      <SixColumns strip />
      <main className="page narrow">
        <header className="plate-all-head">
          <h1>{text.phrase('plate-of', { name })}</h1>
          <PhotoButton photos={photos} />
        </header>
        <p className="second">{text.phrase('plate-all-help')}</p>
        <QuickList paths={paths} label={text.phrase('plate')} />
        <Link className="button plain plate-all" href={`/jobs/${doc}/plate/${collection}/${id}`}>
          {text.phrase('plate-drawn')}
        </Link>
        <Link className="button main walk-start" href={back}>
          {text.phrase('plate-all-done')}
        </Link>
      </main>
    </>
  );
}

/** How readings were known before comes back when the plate is left. */
function useAsNameplate(): void {
  useEffect(() => {
    const { how } = sticky.get();
    stickHow('nameplate');
    return () => stickHow(how);
  }, []);
}
