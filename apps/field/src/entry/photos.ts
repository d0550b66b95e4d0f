/**
 * Photos of what was read: on the device, beside the reading they belong to. Each is drawn anew at most 1600 px long, by
 * which everything else in the file (place, time, the phone's name) is left behind.
 */
import type { DeviceStorage } from '../store/device-storage.ts';

export const LONGEST_SIDE = 1600;
const QUALITY = 0.82;

export interface Photo {
  readonly key: string;
  readonly blob: Blob;
}

/** All photos of a reading, the oldest first. */
export async function photosOf(storage: DeviceStorage, doc: string, path: string): Promise<readonly Photo[]> {
  return storage.retry(async (database) => {
    const range = IDBKeyRange.bound(`${doc}/${path}#`, `${doc}/${path}#\uffff`);
    const transaction = database.transaction('photos');
    const [keys, blobs] = await Promise.all([
      transaction.store.getAllKeys(range),
      transaction.store.getAll(range),
    ]);
    return keys.flatMap((key, i) => {
      const blob = blobs[i];
      return blob === undefined ? [] : [{ key, blob }];
    });
  });
}

/** Keeps a photo; rejects when the device has no room or the file is no picture. */
export async function addPhoto(
  storage: DeviceStorage,
  at: { readonly doc: string; readonly path: string },
  file: Blob,
): Promise<Photo> {
  const blob = await drawnAnew(file);
  const key = `${at.doc}/${at.path}#${new Date().toISOString()}`;
  await storage.retry((database) => database.put('photos', blob, key));
  return { key, blob };
}

export async function removePhoto(storage: DeviceStorage, key: string): Promise<void> {
  await storage.retry((database) => database.delete('photos', key));
}

async function drawnAnew(file: Blob): Promise<Blob> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    const { width, height } = fitted(bitmap);
    const canvas = new OffscreenCanvas(width, height);
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('no canvas');
    context.drawImage(bitmap, 0, 0, width, height);
    return await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
  } finally {
    bitmap.close();
  }
}

interface Extent {
  readonly width: number;
  readonly height: number;
}

/** The same shape, no side longer than allowed; never enlarged. */
export function fitted({ width, height }: Extent): Extent {
  const scale = Math.min(1, LONGEST_SIDE / Math.max(width, height, 1));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}
