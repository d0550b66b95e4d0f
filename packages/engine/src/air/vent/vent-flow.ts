/**
 * Flow of flue gas that a draught drives through a vent.
 *
 *     k = ki + 0.75·n + f·L/d + kc         ki = 1.5 behind a draught hood, 0 straight from a fan; kc = 0.5 of the cap
 *     w = π/4·d²·√(2·Δp·ρ/k),  ρ = p/(R·Tg)
 *
 * In the trade’s units and with I = w/M this is the chimney design equation
 * I = 4.13e5·(d²/M)·√(Δp·B/(k·Tm)) of the handbook: the constant follows to 0.1 %.
 *
 * Source: Bernoulli with loss coefficients; coefficients of ASHRAE Handbook – HVAC Systems and Equipment, chimneys,
 * from memory (friction 0.4·L/d with L in feet and d in inches: f = 0.0333).
 * Range: as declared. Errors: range issues of `evaluate`.
 * Worked example: 5 in, 10 ft straight up, draught hood → k = 2.8; 12.9 Pa at 446 K → 0.0339 kg/s.
 */
import type { Formula, Source } from '../../trace/index.ts';
import { AIR_CONSTANT } from './draught.ts';

const ELBOW_LOSS = 0.75;
const CAP_LOSS = 0.5;
/** Darcy’s friction factor of metal vents. */
const FRICTION = 0.4 / 12;

export const CHIMNEY_SOURCE: Source = {
  document: 'ASHRAE Handbook – HVAC Systems and Equipment',
  at: 'chimneys, design equation and loss coefficients',
  known: 'from memory',
};

export interface VentShape {
  /** ki of the way into the vent. */
  readonly inletLoss: number;
  /** n of elbows over 45 to 90°. */
  readonly elbows: number;
  /** L, lateral and height together, m. */
  readonly length: number;
  /** d, m. */
  readonly diameter: number;
}

/** Loss coefficient of the whole vent, on the velocity head of its gas. */
export const ventLoss: Formula<VentShape> = {
  id: 'air.vent-loss',
  equation: 'k = ki + 0.75·n + f·L/d + kc',
  inputs: {
    inletLoss: { symbol: 'ki', kind: 'ratio', min: 0, max: 10 },
    elbows: { symbol: 'n', kind: 'ratio', min: 0, max: 20 },
    length: { symbol: 'L', kind: 'length', min: 0, max: 200 },
    diameter: { symbol: 'd', kind: 'diameter', min: 0.02, max: 3 },
  },
  result: { symbol: 'k', kind: 'ratio' },
  source: CHIMNEY_SOURCE,
  kernel: (x) => x.inletLoss + ELBOW_LOSS * x.elbows + (FRICTION * x.length) / x.diameter + CAP_LOSS,
};

export interface DrivenVent {
  /** Δp, Pa. */
  readonly draught: number;
  /** d, m. */
  readonly diameter: number;
  /** k. */
  readonly lossCoefficient: number;
  /** Tg, K. */
  readonly gasTemperature: number;
  /** p, absolute, Pa. */
  readonly atmosphere: number;
}

/** Flow through the vent, kg/s. */
export const ventFlow: Formula<DrivenVent> = {
  id: 'air.vent-flow',
  equation: 'w = π/4·d²·√(2·Δp·p/(R·Tg·k))',
  inputs: {
    draught: { symbol: 'Δp', kind: 'pressure-difference', min: 0, max: 1000 },
    diameter: { symbol: 'd', kind: 'diameter', min: 0.02, max: 3 },
    lossCoefficient: { symbol: 'k', kind: 'ratio', min: 0.1, max: 1000 },
    gasTemperature: { symbol: 'Tg', kind: 'temperature', min: 223.15, max: 1273.15 },
    atmosphere: { symbol: 'p', kind: 'absolute-pressure', min: 5e4, max: 1.1e5 },
  },
  result: { symbol: 'w', kind: 'mass-flow' },
  source: CHIMNEY_SOURCE,
  kernel: (x) => {
    const density = x.atmosphere / (AIR_CONSTANT * x.gasTemperature);
    return (Math.PI / 4) * x.diameter ** 2 * Math.sqrt((2 * x.draught * density) / x.lossCoefficient);
  },
};
