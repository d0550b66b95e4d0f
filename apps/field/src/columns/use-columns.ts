/** What the columns know beside the job as it stands: how they stood before, how sure they are, what has been said. */
import { type Study, study } from '@firstfire/job';
import { findingId } from '@firstfire/reference';
import { useEffect, useRef, useState } from 'react';
import { today } from '../session/job-session.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { type Column, columnOf } from './column.ts';

/** Nothing is said, and nothing slow is worked out, before the hand has rested this long, ms. */
const REST = 600;

interface Kept {
  readonly version: number;
  readonly study: Study;
  readonly before: Study | undefined;
}

/** By job; outlives the page, so that a reading entered on one page shows on the next. */
const kept = new WeakMap<object, Kept>();

/** Columns that stood otherwise before the last edit, or stand otherwise without what is being typed. */
export function useBefore(shown: Study): ReadonlyMap<string, Column> {
  const session = useSession();
  const { version, study: now } = useMoment();
  const last = kept.get(session);
  if (last?.version !== version) kept.set(session, { version, study: now, before: last?.study });
  const before = shown === now ? kept.get(session)?.before : now;
  const changed = new Map<string, Column>();
  for (const [i, line] of shown.lines.entries()) {
    const old = before?.lines[i];
    if (old === undefined || old === line) continue;
    const [was, is] = [columnOf(old), columnOf(line)];
    if (was.shape !== is.shape || was.height !== is.height) changed.set(line.line, was);
  }
  return changed;
}

const NONE: ReadonlyMap<string, number> = new Map();

/** The ± of every margin of the job, once nothing has changed for a while. */
export function usePlusMinus(isWanted: boolean): ReadonlyMap<string, number> {
  const { view } = useMoment();
  const [known, setKnown] = useState({ view, spreads: NONE });
  useEffect(() => {
    if (!isWanted) return undefined;
    const timer = setTimeout(
      () => setKnown({ view, spreads: spreadsOf(study(view, { today: today() })) }),
      REST,
    );
    return () => clearTimeout(timer);
  }, [view, isWanted]);
  return known.view === view ? known.spreads : NONE;
}

function spreadsOf({ lines }: Study): ReadonlyMap<string, number> {
  return new Map(
    lines.flatMap(({ findings }) =>
      findings.flatMap((one) =>
        one.plusMinus === undefined ? [] : [[findingId(one), one.plusMinus] as const],
      ),
    ),
  );
}

/** Columns whose verdict has changed since it was last said: said once, after a rest. */
export function useSpoken(columns: readonly Column[]): readonly Column[] {
  const said = useRef(new Map(columns.map(({ line, shape }) => [line, shape])));
  const [spoken, setSpoken] = useState<readonly Column[]>([]);
  const shapes = columns.map(({ shape }) => shape).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a verdict that changes is said
  useEffect(() => {
    const timer = setTimeout(() => {
      const changed = columns.filter(({ line, shape }) => said.current.get(line) !== shape);
      if (changed.length === 0) return;
      for (const { line, shape } of changed) said.current.set(line, shape);
      setSpoken(changed);
    }, REST);
    return () => clearTimeout(timer);
  }, [shapes]);
  return spoken;
}
