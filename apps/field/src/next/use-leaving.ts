/** What takes a moment to find: which findings a closer measurement would settle, which plates have no photo. */
import { type JobView, study } from '@firstfire/job';
import { useEffect, useState } from 'react';
import { photosOf } from '../entry/photos.ts';
import { today } from '../session/today.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useShop } from '../store/shop-context.ts';
import { platesOf, type Wide, wideOf } from './leaving.ts';

/** Undefined until it has been looked into: after the page has been painted. */
export function useWide(): readonly Wide[] | undefined {
  const { view } = useMoment();
  const [found, setFound] = useState<
    { readonly view: JobView; readonly wide: readonly Wide[] } | undefined
  >();
  useEffect(() => {
    const waiting = setTimeout(() => {
      setFound({ view, wide: wideOf(view, study(view, { today: today(), uncertainty: true })) });
    }, 0);
    return () => clearTimeout(waiting);
  }, [view]);
  return found?.view === view ? found.wide : undefined;
}

/** Plates without a photo on this device, as `heaters/h1/plate`. */
export function useUnpictured(): readonly string[] | undefined {
  const { view } = useMoment();
  const { doc } = useSession();
  const { storage } = useShop();
  const [found, setFound] = useState<readonly string[] | undefined>();
  useEffect(() => {
    let isGone = false;
    const plates = platesOf(view);
    Promise.all(plates.map((path) => photosOf(storage, doc, path))).then(
      (photos) => {
        if (!isGone) setFound(plates.filter((_, i) => photos[i]?.length === 0));
      },
      () => setFound([]),
    );
    return () => {
      isGone = true;
    };
  }, [storage, doc, view]);
  return found;
}
