/** After the first work worth keeping the browser is asked, once, to keep it; its answer is remembered. */
import type { DeviceMarks } from './marks.ts';

export async function askToLast(marks: DeviceMarks): Promise<void> {
  const { begunAt, lasting } = marks.now.get();
  if (begunAt === 0) await marks.change((now) => ({ begunAt: now.begunAt || Date.now() }));
  if (lasting !== undefined) return;
  const answer = await globalThis.navigator?.storage?.persist?.();
  if (answer !== undefined) await marks.change(() => ({ lasting: answer }));
}
