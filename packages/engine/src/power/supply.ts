/**
 * The supply behind the panel, from what two readings of a voltmeter and one of a clamp meter tell of it.
 *
 *     Z = (V0 − V1)/I1        V = V0 − Z·I
 *
 * Z is transformer, service, feeder and branch together, there and back. It is a plain number: the readings are
 * magnitudes, and a motor's phase makes the drop at start a little smaller than this gives.
 *
 * Source: Ohm's law.
 * Range: 1 to 700 V, 0.1 to 1000 A running, up to 2000 A at start. Errors: range issues of `evaluate`; a voltage that
 * rises under load gives no impedance: `no-solution`.
 * Worked example: 241 V at rest, 236 V at 10 A → 0.5 ohm; 40 A at start → 221 V.
 */
import type { Formula, Source } from '../trace/index.ts';

const OHM: Source = { document: 'Ohm’s law', known: 'physics' };

export interface SupplyReadings {
  /** With nothing running, V. */
  readonly voltsIdle: number;
  /** Under load, V. */
  readonly voltsRunning: number;
  /** The load then, A. */
  readonly current: number;
}

/** Impedance of the whole supply, ohm. */
export const supplyImpedance: Formula<SupplyReadings> = {
  id: 'power.supply-impedance',
  equation: 'Z = (V0 − V1)/I',
  inputs: {
    voltsIdle: { symbol: 'V0', kind: 'voltage', min: 1, max: 700 },
    voltsRunning: { symbol: 'V1', kind: 'voltage', min: 1, max: 700 },
    current: { symbol: 'I', kind: 'current', min: 0.1, max: 1000 },
  },
  result: { symbol: 'Z', kind: 'resistance' },
  source: OHM,
  kernel: (x) => (x.voltsRunning > x.voltsIdle ? Number.NaN : (x.voltsIdle - x.voltsRunning) / x.current),
};

export interface SupplyUnderLoad {
  /** V. */
  readonly voltsIdle: number;
  /** Ohm. */
  readonly impedance: number;
  /** A. */
  readonly startCurrent: number;
}

/** Voltage left while a load draws its current, V. */
export const voltageUnderLoad: Formula<SupplyUnderLoad> = {
  id: 'power.voltage-under-load',
  equation: 'V = V0 − Z·I',
  inputs: {
    voltsIdle: { symbol: 'V0', kind: 'voltage', min: 1, max: 700 },
    impedance: { symbol: 'Z', kind: 'resistance', min: 0, max: 100 },
    startCurrent: { symbol: 'I', kind: 'current', min: 0, max: 2000 },
  },
  result: { symbol: 'V', kind: 'voltage' },
  source: OHM,
  kernel: (x) => {
    const left = x.voltsIdle - x.impedance * x.startCurrent;
    return left < 0 ? Number.NaN : left;
  },
};
