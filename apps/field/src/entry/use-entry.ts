/** One reading being entered: what it was, what it would change, and where the walk goes from it. */
import type { Edit, Reading, Study } from '@firstfire/job';
import { useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { useMoment, useSession } from '../session/use-job.tsx';
import { readingOf } from './reading.ts';
import { endRound, neighbours, roundAt } from './round.ts';
import { skipsOf, unskip } from './skips.ts';
import { sticky } from './sticky.ts';
import { trialView } from './trial.ts';
import type { FieldAt } from './understood.ts';
import type { Given } from './use-quantity.ts';
import { nextOf, previousOf, visit } from './walk.ts';

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
    if (given !== undefined) {
      session.edit(editsFor(at, given, note, exists(session, at)));
      unskip(session.doc, path);
    }
    if (round !== undefined) {
      const { after } = neighbours(round, path);
      if (after === undefined) go(round.back);
      else open(after);
      return;
    }
    const { study: now } = session.now.get();
    const after = nextOf({ doc: session.doc, study: now, skips: skipsOf(session.doc).get(), path });
    if (after === undefined) go(`/jobs/${session.doc}`);
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

type Session = ReturnType<typeof useSession>;

function exists(session: Session, { collection, id }: FieldAt): boolean {
  return (
    id === '-' ||
    session.now
      .get()
      .view.all(collection)
      .some((one) => one.id === id)
  );
}

function editsFor({ collection, id, field }: FieldAt, given: Given, note: string, isThere: boolean): Edit[] {
  const noted = note.trim() === '' ? {} : { note: note.trim() };
  const value = readingOf({ how: sticky.get().how, ...given, ...noted });
  const set: Edit = { type: 'set', collection, ...(id === '-' ? {} : { element: id }), field, value };
  return isThere ? [set] : [{ type: 'add', collection, element: id }, set];
}
