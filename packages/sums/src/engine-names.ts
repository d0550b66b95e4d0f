/** Issues of the engine, renamed from its names to those a person types: `waterTemperature` → `water-temperature`. */
import { fail, type Issue } from '@firstfire/engine';

/** A failure whose issues point at the inputs of the sum. */
export function failTyped(issues: readonly Issue[]): {
  readonly ok: false;
  readonly issues: readonly Issue[];
} {
  return fail(...issues.map((issue) => ({ ...issue, where: typed(issue.where) })));
}

function typed(name: string): string {
  return name.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);
}
