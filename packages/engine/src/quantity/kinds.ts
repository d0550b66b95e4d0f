/**
 * The kinds of quantity the trade measures, each with the SI unit the engine computes in.
 *
 * A kind is finer than a dimension where mixing would be a mistake a person could make: a temperature and a
 * temperature difference are both kelvins, a standard and a metered cubic foot of gas are both cubic feet.
 */
export const KINDS = {
  length: 'm',
  diameter: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  time: 's',
  angle: 'rad',
  velocity: 'm/s',
  acceleration: 'm/s2',
  frequency: '1/s',
  /** Gauge pressure, above the local atmosphere. */
  pressure: 'Pa',
  'absolute-pressure': 'Pa',
  'pressure-difference': 'Pa',
  /** Height of a column of the flowing liquid. */
  head: 'm',
  temperature: 'K',
  'temperature-difference': 'K',
  energy: 'J',
  'heat-rate': 'W',
  power: 'W',
  'heat-flux': 'W/m2',
  'volume-flow': 'm3/s',
  'mass-flow': 'kg/s',
  'mass-flux': 'kg/(m2 s)',
  /** Gas volume brought to 15 °C and 101.325 kPa, dry (the ISO 13443 reference). */
  'standard-gas-volume': 'm3',
  'standard-gas-flow': 'm3/s',
  /** Gas volume as the meter turned, at the pressure and temperature in the meter. */
  'metered-gas-volume': 'm3',
  'metered-gas-flow': 'm3/s',
  /** Heat of combustion of a standard volume (15 °C, 101.325 kPa), gross unless said otherwise. */
  'heating-value': 'J/m3',
  'heating-value-by-mass': 'J/kg',
  density: 'kg/m3',
  'dynamic-viscosity': 'Pa s',
  'kinematic-viscosity': 'm2/s',
  'specific-heat': 'J/(kg K)',
  'latent-heat': 'J/kg',
  conductance: 'W/K',
  transmittance: 'W/(m2 K)',
  'thermal-conductivity': 'W/(m K)',
  /** Any pure number; per cent and parts per million are ways to write one. */
  ratio: '1',
  /** pH, and a saturation index, which is a difference of two. */
  ph: '1',
  /** Of a trace gas, which is told in parts per million. */
  'volume-fraction': '1',
  /** Flow of water in m3/s at a drop of 1 Pa (Cv and Kv are ways to write one). */
  'flow-coefficient': 'm3/(s Pa^0.5)',
  voltage: 'V',
  current: 'A',
  resistance: 'ohm',
  /** Cross-section of a conductor; a wire gauge number is a way to write one. */
  'wire-size': 'm2',
  force: 'N',
  'price-per-energy': '1/J',
  'emission-factor': 'kg/J',
  'mass-concentration': 'kg/m3',
  /** Sound pressure level as heard, A-weighted. */
  'sound-level': 'dB',
} as const;

export type Kind = keyof typeof KINDS;

/** The SI unit of a kind, as plain ASCII. */
export function siUnit(kind: Kind): string {
  return KINDS[kind];
}
