/** How readings are being taken: stays as it is until somebody changes it, for as long as the tab lives. */
import type { quantity } from '@firstfire/engine';
import type { HowKnown } from '@firstfire/job';
import { Signal } from '../store/signal.ts';

export interface Taking {
  /** A tape is good for lengths, a gauge for pressures. */
  readonly instrument?: string;
  /** A ± as typed. */
  readonly pm?: string;
}

export interface Sticky {
  readonly how: HowKnown;
  readonly taking: Readonly<Partial<Record<quantity.Kind, Taking>>>;
}

export const sticky = new Signal<Sticky>({ how: 'measured', taking: {} });

export function stickHow(how: HowKnown): void {
  sticky.set({ ...sticky.get(), how });
}

export function stickTaking(kind: quantity.Kind, taking: Taking): void {
  const now = sticky.get();
  sticky.set({ ...now, taking: { ...now.taking, [kind]: taking } });
}

/** What each kind is measured with, by the names in `app.instrument.*`; the first is the usual one. */
const INSTRUMENTS: Partial<Record<quantity.Kind, readonly string[]>> = {
  length: ['tape', 'laser', 'wheel', 'paced'],
  diameter: ['tape', 'calliper'],
  area: ['tape'],
  pressure: ['manometer', 'gauge'],
  'pressure-difference': ['manometer', 'gauge'],
  temperature: ['thermometer'],
  'temperature-difference': ['thermometer'],
  voltage: ['multimeter'],
  current: ['clamp'],
  'volume-flow': ['flow-meter'],
  'standard-gas-flow': ['gas-meter'],
  frequency: ['display'],
  'mass-concentration': ['test-kit'],
  ph: ['test-kit'],
  'volume-fraction': ['analyser'],
  time: ['watch'],
  'sound-level': ['sound-meter'],
};

export function instrumentsOf(kind: quantity.Kind): readonly string[] {
  return INSTRUMENTS[kind] ?? [];
}
