/** The unit a bare number is in: the one the reading had, else the one the trade speaks of it in. */
import { quantity } from '@firstfire/engine';
import type { Reading } from '@firstfire/job';
import type { FieldAt } from './understood.ts';

/** A bare number is in the unit the reading had before. */
export function unitOfBare(before: Reading | undefined, kind: quantity.Kind): string | undefined {
  const unit = before?.unit;
  return unit !== undefined && quantity.parseQuantity(`1 ${unit}`, kind).ok ? unit : undefined;
}

interface Asked {
  readonly at: FieldAt;
  readonly kind: quantity.Kind;
  readonly medium: 'gas' | 'water';
}

export function usualUnit({ kind, medium, at }: Asked, system: quantity.UnitSystem): string {
  if (kind === 'length' && system !== 'si' && IN_INCHES.has(`${at.collection}.${at.field}`)) return 'in';
  if (kind === 'area' && system !== 'si' && at.field.startsWith('opening')) return 'in2';
  if (kind === 'time' && /runOn|testDuration/.test(at.field)) return 'min';
  if (kind === 'velocity' && system === 'us' && at.field === 'windSpeed') return 'mph';
  return quantity.preferredUnit(kind, system, medium);
}

/** Lengths that the trade speaks of in inches. */
const IN_INCHES = new Set([
  ...['width', 'depth', 'height', 'trapNipple', 'reliefDischargeHeight'].map((one) => `heaters.${one}`),
  ...['Water', 'Far', 'Back', 'Front', 'Above'].map((one) => `heaters.clearance${one}`),
  ...['Left', 'Right', 'Back', 'Front', 'Above'].map((one) => `spots.clearance${one}`),
  'spots.padHeight',
  'spots.openingLowFloor',
  'spots.openingHighCeiling',
  'spots.openingLeastSide',
  'gasSegments.cover',
  'circuits.cover',
  'lifts.reach',
  'lifts.from',
  'lifts.to',
  'waterLoop.solarPipe',
  'bonding.width',
  'bonding.gridPitch',
  'bonding.ringDistance',
  'bonding.ringDepth',
]);

/** The unit a number at the end will be read in: inches behind feet. */
export function lastUnit(typed: string, unit: string, name: (unit: string) => string): string {
  const inches = name('in');
  return new RegExp(`\\d\\s*(?:${name('ft')}|ft|')\\s*[\\d./-]*$`, 'u').test(typed) ? inches : name(unit);
}
