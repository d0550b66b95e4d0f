/**
 * The state at which a standard volume of gas is counted.
 *
 * The same gas fills different volumes at different bases, in the proportion p/T of an ideal gas; the change of
 * compressibility between these bases is of the order of 1e-5 and is left out. Water vapour is left out too: each
 * base is taken dry.
 *
 * Source: ISO 13443 (15 °C, 101.325 kPa); the 60 °F, 14.73 psia of the North American gas trade and the 0 °C normal
 * state are common practice, from memory.
 */
import { ATMOSPHERE, PSI, ZERO_CELSIUS } from './constants.ts';

export interface GasBase {
  /** As it stands in a unit id, such as `60F,14.73psia`. */
  readonly id: string;
  /** K. */
  readonly temperature: number;
  /** Absolute, Pa. */
  readonly pressure: number;
}

const SIXTY_FAHRENHEIT = (60 + 459.67) / 1.8;

export const GAS_BASES = {
  /** The gas trade of the United States and of imperial units in Canada. */
  trade: { id: '60F,14.73psia', temperature: SIXTY_FAHRENHEIT, pressure: 14.73 * PSI },
  /** Process industry of the United States. */
  atmosphere: { id: '60F,14.696psia', temperature: SIXTY_FAHRENHEIT, pressure: 14.696 * PSI },
  /** ISO 13443, metric units in Canada, and this engine. */
  metric: { id: '15C,101.325kPa', temperature: 288.15, pressure: ATMOSPHERE },
  /** The normal cubic metre. */
  normal: { id: '0C,101.325kPa', temperature: ZERO_CELSIUS, pressure: ATMOSPHERE },
} as const satisfies Record<string, GasBase>;

/** Standard cubic metres (15 °C, 101.325 kPa) in one cubic metre counted at `base`. */
export function standardCubicMetres(base: GasBase): number {
  return (base.pressure / GAS_BASES.metric.pressure) * (GAS_BASES.metric.temperature / base.temperature);
}
