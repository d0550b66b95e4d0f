/**
 * The year of the job, marched in a worker once the job has rested, and kept until something it stands on changes.
 * It can be stopped, and begun again.
 */
import { type NamedWeather, type YearStudy, yearStandsOn } from '@firstfire/job';
import { useEffect, useMemo, useState } from 'react';
import { useMoment, useSession } from '../session/use-job.tsx';
import { type YearTold, yearWorker } from './year-asked.ts';

export type YearState =
  | { readonly state: 'waiting' | 'stopped' | 'broken' }
  | { readonly state: 'marching'; readonly done: number; readonly of: number }
  /** Not fresh: something it stands on has changed since; `meanwhile` says whether the next is on its way. */
  | {
      readonly state: 'known';
      readonly study: YearStudy;
      readonly fresh: boolean;
      readonly meanwhile: 'marching' | 'stopped' | 'broken';
    };

export interface Year {
  readonly now: YearState;
  readonly stop: () => void;
  readonly begin: () => void;
}

const REST_MS = 500;
const WAITING: YearState = { state: 'waiting' };

/** The last year of each job. */
const kept = new Map<string, Kept>();

interface Kept {
  readonly key: string;
  readonly study: YearStudy;
}

export function useYear(weather: NamedWeather | undefined): Year {
  const { view } = useMoment();
  const { doc } = useSession();
  const job = useMemo(() => yearStandsOn(view), [view]);
  const key = useMemo(() => `${weather?.name ?? ''} ${JSON.stringify(job)}`, [job, weather]);
  const [told, tell] = useState<{ readonly key: string; readonly now: YearState }>();
  const [asked, ask] = useState({ stopped: false, times: 0 });
  const known = kept.get(doc);
  const has = known?.key === key;
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again, it marches again
  useEffect(() => {
    if (has || asked.stopped) return undefined;
    let worker: Worker | undefined;
    const say = (now: YearState): void => tell({ key, now });
    const timer = setTimeout(() => {
      worker = yearWorker();
      say({ state: 'marching', done: 0, of: 0 });
      worker.addEventListener('message', ({ data }: MessageEvent<YearTold>) => {
        if (data.tell === 'marched') say({ state: 'marching', done: data.done, of: data.of });
        if (data.tell !== 'year') return;
        kept.set(doc, { key, study: data.study });
        say(WAITING);
        worker?.terminate();
      });
      worker.addEventListener('error', () => say({ state: 'broken' }));
      worker.postMessage({ ask: 'year', job, weather });
    }, REST_MS);
    return () => {
      clearTimeout(timer);
      worker?.terminate();
    };
  }, [key, doc, asked]);
  const idle = asked.stopped ? 'stopped' : toldState();
  return useMemo(
    () => ({
      now: stateNow(known, { has, idle, told: told?.key === key ? told.now : WAITING }),
      stop: () => ask(({ times }) => ({ stopped: true, times })),
      begin: () => ask(({ times }) => ({ stopped: false, times: times + 1 })),
    }),
    [known, has, idle, told, key],
  );

  function toldState(): 'marching' | 'broken' {
    return told?.key === key && told.now.state === 'broken' ? 'broken' : 'marching';
  }
}

interface Standing {
  readonly has: boolean;
  readonly idle: 'marching' | 'stopped' | 'broken';
  readonly told: YearState;
}

/** The last year stands until the next is there. */
function stateNow(last: Kept | undefined, { has, idle, told }: Standing): YearState {
  if (last !== undefined) return { state: 'known', study: last.study, fresh: has, meanwhile: idle };
  return idle === 'stopped' ? { state: 'stopped' } : told;
}
