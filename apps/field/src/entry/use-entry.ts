/** One reading being entered: what it was, what it would change, and where the walk goes from it. */
import type { Reading, Study } from '@firstfire/job';
import { useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { useMoment, useSession } from '../session/use-job.tsx';
import { endRound, neighbours, roundAt } from './round.ts';
import { skipsOf } from './skips.ts';
import { sticky } from './sticky.ts';
import { trialView } from './trial.ts';
import type { FieldAt } from './understood.ts';
import type { Given } from './use-quantity.ts';
import { nextOf, previousOf, visit } from './walk.ts';
import { writeReading } from './write.ts';

export interface Entering {
  readonly before: Reading | undefined;
  /** Of the job as it would be with what is typed. */
  readonly trial: Study;
  readonly study: Study;
  readonly tryOut: (given: Given | undefined) => void;
  /** Stores what is given, if anything, and goes on. */
  readonly next: (given: Given | undefined, note: string) => void;
  readonly previous: (() => void) | undefined;
  /** Where one came from, when that is not the line of the reading. */
  readonly back: string | undefined;
}

export function useEntry(at: FieldAt): Entering {
  const session = useSession();
  const moment = useMoment();
  const [, go] = useLocation();
  const { collection, id, field } = at;
  const path = `${collection}/${id}/${field}`;
  const round = roundAt(session.doc, path);
  useEffect(() => {
    visit(session.doc, path);
    if (roundAt(session.doc, path) === undefined) endRound();
  }, [session.doc, path]);
  const { trial, tryOut } = useTrial(at);
  const open = (to: string): void => go(`/jobs/${session.doc}/read/${to}`, { replace: true });
  const next = (given: Given | undefined, note: string): void => {
    const before = session.now.get();
    if (given !== undefined) writeReading(session, at, { how: sticky.get().how, ...given, ...noted(note) });
    if (round !== undefined) {
      const { after } = neighbours(round, path);
      if (after === undefined) go(round.back);
      else open(after);
      return;
    }
    const { doc } = session;
    const after = nextOf({ ...before, doc, skips: skipsOf(doc).get(), path }, session.now.get());
    if (after === undefined) go(`/jobs/${doc}/walk`);
    else open(after);
  };
  const back = round === undefined ? previousOf(session.doc, path) : neighbours(round, path).before;
  return {
    before: moment.view.record(collection, id).reading(field),
    study: moment.study,
    trial,
    tryOut,
    next,
    back: round?.back,
    previous: back === undefined ? undefined : () => open(back),
  };
}

/** The study of the job with what is typed in place: after the repaint of the key, and again only when it has changed. */
function useTrial(at: FieldAt): { trial: Study; tryOut: (given: Given | undefined) => void } {
  const session = useSession();
  const { view, study: now } = useMoment();
  const [given, setGiven] = useState<Given | undefined>();
  const tryOut = useCallback(
    (made: Given | undefined) => setGiven((old) => (isSame(old, made) ? old : made)),
    [],
  );
  const deferred = useDeferredValue(given);
  const { collection, id, field } = at;
  const trial = useMemo(() => {
    if (deferred === undefined) return now;
    const reading: Reading = { how: sticky.get().how, ...deferred };
    return session.study(trialView(view, { collection, id, field }, reading));
  }, [deferred, now, session, view, collection, id, field]);
  return { trial, tryOut };
}

function isSame(a: Given | undefined, b: Given | undefined): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function noted(note: string): { readonly note?: string } {
  return note.trim() === '' ? {} : { note: note.trim() };
}
