/** One tab at a time. */

/** Runs `work` while no other tab does the same; where tabs cannot be told apart, at once. */
export function alone<T>(name: string, work: () => Promise<T>): Promise<T> {
  const locks = globalThis.navigator?.locks;
  return locks === undefined ? work() : (locks.request(name, work) as Promise<T>);
}
