/** The photos of a reading on this device, as pictures the page can show. */
import { useCallback, useEffect, useState } from 'react';
import { useSession } from '../session/use-job.tsx';
import { useShop } from '../store/shop-context.ts';
import { addPhoto, photosOf, removePhoto } from './photos.ts';

export interface Shown {
  readonly key: string;
  readonly url: string;
}

export interface PhotosAt {
  readonly shown: readonly Shown[];
  /** The last one could not be kept. */
  readonly isRefused: boolean;
  readonly add: (file: Blob) => void;
  readonly remove: (key: string) => void;
}

export function usePhotos(path: string): PhotosAt {
  const { storage } = useShop();
  const { doc } = useSession();
  const [shown, setShown] = useState<readonly Shown[]>([]);
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    let isGone = false;
    const made: string[] = [];
    photosOf(storage, doc, path).then(
      (photos) => {
        if (isGone) return;
        const pictures = photos.map(({ key, blob }) => ({ key, url: URL.createObjectURL(blob) }));
        made.push(...pictures.map((one) => one.url));
        setShown(pictures);
      },
      () => setShown([]),
    );
    return () => {
      isGone = true;
      for (const url of made) URL.revokeObjectURL(url);
    };
  }, [storage, doc, path]);
  const add = useCallback(
    (file: Blob): void => {
      addPhoto(storage, { doc, path }, file).then(
        ({ key, blob }) => {
          setRefused(false);
          setShown((now) => [...now, { key, url: URL.createObjectURL(blob) }]);
        },
        () => setRefused(true),
      );
    },
    [storage, doc, path],
  );
  const remove = useCallback(
    (key: string): void => {
      void removePhoto(storage, key).then(() => setShown((now) => now.filter((one) => one.key !== key)));
    },
    [storage],
  );
  return { shown, isRefused, add, remove };
}
