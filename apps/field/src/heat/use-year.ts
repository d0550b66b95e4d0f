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
  | { readonly state: 'known'; readonly study: YearStudy };

export interface Year {
  readonly now: YearState;
  readonly stop: () => void;
  readonly begin: () => void;
}

const REST_MS = 500;
const WAITING: YearState = { state: 'waiting' };

/** The last year of each job. */
const kept = new Map<string, { readonly key: string; readonly study: YearStudy }>();

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
        say({ state: 'known', study: data.study });
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
  return {
    now: stateNow(),
    stop: () => ask(({ times }) => ({ stopped: true, times })),
    begin: () => ask(({ times }) => ({ stopped: false, times: times + 1 })),
  };

  function stateNow(): YearState {
    if (has && known !== undefined) return { state: 'known', study: known.study };
    if (asked.stopped) return { state: 'stopped' };
    return told?.key === key ? told.now : WAITING;
  }
}
