/** Work for a quiet moment. What fails of it is taken up the next time. */
export function whenIdle(work: () => Promise<void>): void {
  const run = (): void => {
    work().catch(() => {});
  };
  if ('requestIdleCallback' in globalThis) globalThis.requestIdleCallback(run, { timeout: 5000 });
  else setTimeout(run, 200);
}
