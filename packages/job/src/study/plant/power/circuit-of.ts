/** The circuit that feeds a heater. */
import type { Where } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';

/** A heater and its circuit, by their ids. */
export interface Fed {
  readonly heater: string;
  readonly circuit: string;
}

/** Id of the circuit that names the heater; the only unnamed one of the only heater; else one that has yet to be surveyed. */
export function circuitOf(view: JobView, heater: string): string {
  const circuits = view.all('circuits');
  const named = circuits.find((one) => one.reading('heater')?.value === heater);
  if (named !== undefined) return named.id;
  const [first, ...more] = circuits;
  return first !== undefined && more.length === 0 && first.reading('heater') === undefined
    ? first.id
    : `of-${heater}`;
}

/** A field of the circuit. */
export function ofCircuit({ circuit }: Fed, field: string): Where {
  return { collection: 'circuits', id: circuit, field };
}
