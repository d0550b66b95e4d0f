/** The books of a year: every flow of heat in every month, as one flat array, and how it is read. */
import { MONTHS } from '../climate/index.ts';

/** Flows in the order of the ledger. Those after `heater` leave the water; `sun` is below zero, being a gain. */
export const FLOWS = [
  'heater',
  'evaporation',
  'convection',
  'longWave',
  'sun',
  'ground',
  'makeUp',
  'spillway',
  'airJets',
  'exchange',
] as const;
export type Flow = (typeof FLOWS)[number];

export const FLOW_COUNT = FLOWS.length;

export interface Ledger {
  /** J, month by month, flow by flow. */
  readonly flows: Float64Array;
  /** Water that evaporated in each month, kg. */
  readonly evaporated: Float64Array;
  /** Water temperature at the end of each hour, K. */
  readonly waterTemperature: Float64Array;
  /** Hours of each month that ended colder than wanted. */
  readonly short: Float64Array;
}

/** Empty books for a year of so many hours. */
export function emptyLedger(hours: number): Ledger {
  return {
    flows: new Float64Array(MONTHS * FLOW_COUNT),
    evaporated: new Float64Array(MONTHS),
    waterTemperature: new Float64Array(hours),
    short: new Float64Array(MONTHS),
  };
}

/** Wipes the books for another year. */
export function clearLedger(ledger: Ledger): void {
  ledger.flows.fill(0);
  ledger.evaporated.fill(0);
  ledger.short.fill(0);
}

/** A flow in each month, J. */
export function monthsOf(ledger: Ledger, flow: Flow): number[] {
  const at = FLOWS.indexOf(flow);
  return Array.from({ length: MONTHS }, (_, m) => ledger.flows[m * FLOW_COUNT + at] ?? 0);
}

/** Heat that entered less heat that left, J: what must now be stored. */
export function netHeat(ledger: Ledger): number {
  let net = 0;
  for (let i = 0; i < ledger.flows.length; i++)
    net += i % FLOW_COUNT === 0 ? (ledger.flows[i] ?? 0) : -(ledger.flows[i] ?? 0);
  return net;
}
