/**
 * Which replica this tab writes as. Two tabs never share one: each holds a lock on its own for as long as it lives, and
 * takes the first that is free, so that a device has a few replicas and not one for every visit.
 */
import type { DeviceStorage } from './device-storage.ts';

const MOST_TABS = 50;

export async function ownReplica(storage: DeviceStorage): Promise<string> {
  if (!('locks' in navigator)) return freshId('r');
  for (let index = 0; index < MOST_TABS; index += 1) {
    if (await held(`firstfire-replica-${index}`)) return replicaAt(storage, index);
  }
  return freshId('r');
}

/** Takes the lock for the life of the tab, or says that another tab has it. */
function held(name: string): Promise<boolean> {
  return new Promise((resolve) => {
    void navigator.locks.request(name, { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return lock === null ? undefined : new Promise<never>(() => {});
    });
  });
}

async function replicaAt(storage: DeviceStorage, index: number): Promise<string> {
  const key = `replica-${index}`;
  try {
    return await storage.retry(async (database) => {
      const known = await database.get('device', key);
      if (typeof known === 'string') return known;
      const made = freshId('r');
      await database.put('device', made, key);
      return made;
    });
  } catch {
    return freshId('r');
  }
}

/** Letters and digits nobody else has. */
export function freshId(prefix: string): string {
  const bytes = crypto.getRandomValues(new Uint8Array(9));
  return `${prefix}${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
