import { useSyncExternalStore } from 'react';
import type { Signal } from './signal.ts';

/** The value of a signal, and a repaint whenever it changes. */
export function useSignal<T>(signal: Signal<T>): T {
  return useSyncExternalStore(signal.subscribe, signal.get);
}
