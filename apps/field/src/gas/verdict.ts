/** How what arrives at the heater is judged: by the finding about it, where the state has one. */
import type { GasHeaterSeen, GasState } from '@firstfire/job';
import type { Finding } from '@firstfire/reference';

export function verdictAt(heater: GasHeaterSeen, state: GasState): Finding['verdict'] | undefined {
  const found = heater.pressures[state];
  if (found === undefined) return undefined;
  return heater.judged[state]?.verdict ?? (isEnough(heater, state, found) ? 'meets' : 'fails');
}

export function isEnough({ least, greatest }: GasHeaterSeen, state: GasState, found: number): boolean {
  return state === 'all-off' ? found <= (greatest ?? Infinity) : found >= (least ?? -Infinity);
}
