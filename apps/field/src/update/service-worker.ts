/**
 * The part of the app that answers with no signal. A new version waits until the person takes it: work is never
 * interrupted, and every tab keeps the version it began with until then.
 */
import { Signal } from '../store/signal.ts';

/** Whether a new version is ready to be used. */
export const updateReady = new Signal(false);

let waiting: ServiceWorker | null = null;

/** Asked for again this often while the app is open. */
const HOUR_MS = 3_600_000;

export async function registerServiceWorker(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  try {
    const registration = await navigator.serviceWorker.register('/sw.js', { scope: '/' });
    note(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const coming = registration.installing;
      coming?.addEventListener('statechange', () => {
        if (coming.state === 'installed' && navigator.serviceWorker.controller !== null) note(coming);
      });
    });
    setInterval(() => void registration.update().catch(() => {}), HOUR_MS);
  } catch {
    // Without it the app works as long as the server answers.
  }
}

function note(worker: ServiceWorker | null): void {
  if (worker === null) return;
  waiting = worker;
  updateReady.set(true);
}

/** Takes the new version: every tab reloads once it is in charge. */
export function takeUpdate(): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting?.postMessage({ type: 'SKIP_WAITING' });
}
