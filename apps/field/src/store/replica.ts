/**
 * Which replica this tab writes as. Two tabs never share one: each holds a lock on its own for as long as it lives, and
 * takes the first that is free, so that a device has a few replicas and not one for every visit.
 */
import type { DeviceStorage } from './device-storage.ts';

const MOST_TABS = 50;

/** The place a tab holds among the tabs of this device; none where tabs cannot be told apart. */
export type Place = number | undefined;

export async function ownPlace(): Promise<Place> {
  if (globalThis.navigator?.locks === undefined) return undefined;
  for (let index = 0; index < MOST_TABS; index += 1) {
    if (await held(`firstfire-replica-${index}`)) return index;
  }
  return undefined;
}

/** The replica of a place; a fresh one where there is no place or the device does not say. */
export async function replicaAt(storage: DeviceStorage, place: Place): Promise<string> {
  const made = freshId('r');
  if (place === undefined) return made;
  try {
    return await storage.retry(async (database) => {
      const transaction = database.transaction('device', 'readwrite');
      const known = await transaction.store.get(keyOf(place));
      if (typeof known === 'string') return known;
      await transaction.store.put(made, keyOf(place));
      await transaction.done;
      return made;
    });
  } catch {
    return made;
  }
}

/** Writes from now on as `replica` in this place; where that cannot be kept, as long as the tab lives. */
export async function renewAt(storage: DeviceStorage, place: Place, replica: string): Promise<void> {
  if (place === undefined) return;
  await storage.retry((database) => database.put('device', replica, keyOf(place))).catch(() => {});
}

function keyOf(place: number): string {
  return `replica-${place}`;
}

/** Takes the lock for the life of the tab, or says that another tab has it. */
function held(name: string): Promise<boolean> {
  return new Promise((resolve) => {
    navigator.locks
      .request(name, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        return lock === null ? undefined : new Promise<never>(() => {});
      })
      .catch(() => resolve(false));
  });
}

/** Letters and digits nobody else has. */
export function freshId(prefix: string): string {
  const bytes = crypto.getRandomValues(new Uint8Array(9));
  return `${prefix}${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
