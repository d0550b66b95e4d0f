/**
 * The ± a reading has when nobody gave one: 95 % half-width by how it is known, so that no one types what the tool
 * can know. *Common practice, no source*: a tape measure is good to half an inch over a yard with corners, a
 * gauge to a tenth of an inch of water or 2 % where that is more, what someone tells to a tenth.
 */
import type { quantity } from '@firstfire/engine';
import type { HowKnown } from '../../schema/index.ts';

/** Half-width in SI, whatever the value. A test kit tells pH to a tenth. */
const MEASURED: Partial<Record<quantity.Kind, number>> = {
  length: 0.0127,
  diameter: 0.0005,
  pressure: 25,
  'pressure-difference': 25,
  head: 0.3,
  temperature: 0.6,
  'temperature-difference': 0.8,
  voltage: 1,
  ph: 0.1,
};

/** Read on a dial, whose own share comes first where the value is large. */
const GAUGED: ReadonlySet<quantity.Kind> = new Set(['pressure', 'pressure-difference']);

/** Share of the value. */
const SHARE: Readonly<Record<HowKnown, number>> = {
  measured: 0.02,
  nameplate: 0,
  drawing: 0.02,
  told: 0.1,
  assumed: 0.2,
};

/** A share of a temperature above absolute zero says nothing: kelvins instead. */
const TEMPERATURE: Readonly<Record<HowKnown, number>> = {
  measured: 0.6,
  nameplate: 0,
  drawing: 1,
  told: 2,
  assumed: 4,
};

export function usualPlusMinus(how: HowKnown, kind: quantity.Kind, value: number): number {
  if (kind === 'temperature') return TEMPERATURE[how];
  const share = SHARE[how] * Math.abs(value);
  if (how !== 'measured') return share;
  const least = MEASURED[kind] ?? 0;
  return GAUGED.has(kind) ? Math.max(least, share) : least || share;
}
