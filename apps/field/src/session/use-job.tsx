/** The job a page is about, and its moment. */
import { createContext, type ReactNode, use, useDeferredValue, useSyncExternalStore } from 'react';
import type { JobSession, Moment } from './job-session.ts';

export const SessionContext = createContext<JobSession | undefined>(undefined);

const LaterContext = createContext<Moment | undefined>(undefined);

export function useSession(): JobSession {
  const session = use(SessionContext);
  if (session === undefined) throw new Error('a page outside a job');
  return session;
}

/** The job as it stands; inside `Later`, as it stood when there was last time to draw it. */
export function useMoment(): Moment {
  const { now } = useSession();
  const later = use(LaterContext);
  const get = later === undefined ? now.get : () => later;
  return useSyncExternalStore(later === undefined ? now.subscribe : NEVER, get);
}

const NEVER = (): (() => void) => () => {};

/**
 * What follows a moment later, so that what is being typed or dragged never waits for it. What stands in here is to be
 * a `memo`: it is then left alone until there is time.
 */
export function Later({ children }: { readonly children: ReactNode }) {
  const moment = useDeferredValue(useMoment());
  return <LaterContext value={moment}>{children}</LaterContext>;
}
