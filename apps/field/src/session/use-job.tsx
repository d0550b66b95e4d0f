/** The job a page is about, and its moment. */
import { createContext, use } from 'react';
import { useSignal } from '../store/use-signal.ts';
import type { JobSession, Moment } from './job-session.ts';

export const SessionContext = createContext<JobSession | undefined>(undefined);

export function useSession(): JobSession {
  const session = use(SessionContext);
  if (session === undefined) throw new Error('a page outside a job');
  return session;
}

export function useMoment(): Moment {
  return useSignal(useSession().now);
}
