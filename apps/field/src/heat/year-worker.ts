/** The worker beside the app that marches years and reads weather files, so that the page stays quick. */
import { heat } from '@firstfire/engine';
import { plainView, yearOfJob } from '@firstfire/job';
import type { YearAsked, YearTold } from './year-asked.ts';

const port = globalThis as unknown as {
  postMessage(told: YearTold): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<YearAsked>) => void): void;
};

port.addEventListener('message', ({ data }) => {
  if (data.ask === 'file') port.postMessage({ tell: 'file', read: heat.readEpw(data.text) });
  else {
    const marched = (done: number, of: number): void => port.postMessage({ tell: 'marched', done, of });
    const { job, weather } = data;
    const study = yearOfJob(plainView(job), { marched, ...(weather === undefined ? {} : { weather }) });
    port.postMessage({ tell: 'year', study });
  }
});
