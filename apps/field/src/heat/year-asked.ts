/** What the page and the worker say to each other. */
import type { heat, Result } from '@firstfire/engine';
import type { NamedWeather, PlainJob, YearStudy } from '@firstfire/job';

export type YearAsked =
  | { readonly ask: 'year'; readonly job: PlainJob; readonly weather: NamedWeather | undefined }
  | { readonly ask: 'file'; readonly text: string };

export type YearTold =
  | { readonly tell: 'marched'; readonly done: number; readonly of: number }
  | { readonly tell: 'year'; readonly study: YearStudy }
  | { readonly tell: 'file'; readonly read: Result<heat.EpwYear> };

export function yearWorker(): Worker {
  return new Worker(new URL('./year-worker.ts', import.meta.url), { type: 'module' });
}
