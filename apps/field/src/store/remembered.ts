/**
 * What the server's cookie remembers of this device: how many jobs there were and when they last changed. A browser
 * that clears what the app stored often leaves it, so that a loss is noticed.
 */
export interface Remembered {
  readonly jobs: number;
  /** ms since 1970. */
  readonly changed: number;
}

/** Worked example: `a=1; firstfire-jobs=3.1700000000000` → 3 jobs, changed then. */
export function rememberedIn(cookie: string): Remembered | undefined {
  const [, jobs, changed] = /(?:^|;\s*)firstfire-jobs=(\d{1,6})\.(\d{1,15})(?:;|$)/.exec(cookie) ?? [];
  return jobs === undefined ? undefined : { jobs: Number(jobs), changed: Number(changed) };
}

/** What was there and is not: what the database's own mark says, where there is one, else what the cookie says. */
export function lostOf(
  found: number,
  { marked, cookie }: { readonly marked: number | undefined; readonly cookie: Remembered | undefined },
): Remembered | undefined {
  const jobs = marked ?? cookie?.jobs ?? 0;
  return found > 0 || jobs === 0 ? undefined : { jobs, changed: cookie?.changed ?? 0 };
}

const DELAY_MS = 1500;
let waiting = false;
let latest = '';
let told = '';

/** Tells the server after a pause, the latest alone; with no signal it is told the next time. */
export function remember({ jobs, changed }: Remembered): void {
  latest = `${jobs} ${Math.round(changed)}`;
  if (waiting || latest === told) return;
  waiting = true;
  setTimeout(() => {
    waiting = false;
    const body = latest;
    fetch('/remember', { method: 'POST', body, keepalive: true })
      .then(({ ok }) => {
        if (ok) told = body;
      })
      .catch(() => {});
  }, DELAY_MS);
}
