/**
 * A port comes with the tests an adapter has to pass. They know no test runner: the adapter's own test runs each case
 * under its name with a fresh adapter, and a case that fails throws.
 */
export interface AcceptanceCase<Port> {
  readonly name: string;
  run(port: Port): void | Promise<void>;
}

/** Throws when a port does not keep its promise. */
export function expectHeld(holds: boolean, what: string): void {
  if (!holds) throw new Error(what);
}
