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

const DELAY_MS = 1500;
let coming: ReturnType<typeof setTimeout> | undefined;

/** Tells the server after a pause; with no signal it is told the next time. */
export function remember({ jobs, changed }: Remembered): void {
  clearTimeout(coming);
  coming = setTimeout(() => {
    fetch('/remember', { method: 'POST', body: `${jobs} ${Math.round(changed)}`, keepalive: true }).catch(
      () => {},
    );
  }, DELAY_MS);
}
