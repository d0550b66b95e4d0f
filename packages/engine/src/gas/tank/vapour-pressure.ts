/**
 * Pressure over liquid propane, and the temperature that belongs to a pressure.
 *
 *     ln(p/pc) = (Tc/T)·(n1·θ + n2·θ^1.5 + n3·θ^2.2 + n4·θ^4.8 + n5·θ^6.2),  θ = 1 − T/Tc
 *
 * with Tc = 369.89 K and pc = 4.2512 MPa. What a tank can push, before its first regulator.
 *
 * How sources disagree: commercial propane holds a little ethane and shows some 12 % more (lists print 127 psi at
 * 70 °F, this equation 110); a trade chart for pure propane agrees within 2 %. The lower pressure is the careful one
 * in winter.
 *
 * Source: Lemmon, McLinden and Wagner, J. Chem. Eng. Data 54 (2009) 3141, vapour-pressure equation (from memory;
 * checked with the normal boiling point 231.036 K and a trade chart).
 * Range: 190 to 365 K. Errors: range issues of `evaluate`.
 *
 * Worked example: 0 °F (255.37 K) → 264 kPa absolute, 23.6 psi gauge at sea level.
 */
import type { Formula, Source } from '../../trace/index.ts';

export const PROPANE_VAPOUR_SOURCE: Source = {
  document: 'Lemmon, McLinden and Wagner, Thermodynamic Properties of Propane (2009)',
  at: 'vapour-pressure equation',
  known: 'from memory',
};

const CRITICAL_TEMPERATURE = 369.89;
const CRITICAL_PRESSURE = 4.2512e6;
const COEFFICIENTS = [-6.7722, 1.6938, -1.3341, -3.1876, 0.94937] as const;
const EXPONENTS = [1, 1.5, 2.2, 4.8, 6.2] as const;

const LOWEST = 190;
const HIGHEST = 365;
const temperature = { symbol: 'T', kind: 'temperature', min: LOWEST, max: HIGHEST } as const;

/** Vapour pressure (absolute, Pa) of propane. */
export const propaneVapourPressure: Formula<{ readonly temperature: number }> = {
  id: 'gas.propane-vapour-pressure',
  equation: 'ln(p/pc) = (Tc/T)·Σ n·θ^t, θ = 1 − T/Tc',
  inputs: { temperature },
  result: { symbol: 'p', kind: 'absolute-pressure' },
  source: PROPANE_VAPOUR_SOURCE,
  kernel: (x) => vapourPressure(x.temperature),
};

function vapourPressure(temperature: number): number {
  const theta = 1 - temperature / CRITICAL_TEMPERATURE;
  const sum = COEFFICIENTS.reduce((total, n, i) => total + n * theta ** (EXPONENTS[i] ?? 0), 0);
  return CRITICAL_PRESSURE * Math.exp((CRITICAL_TEMPERATURE / temperature) * sum);
}

/** Temperature (K) at which propane has a vapour pressure: the inverse, by the secant method on ln p over 1/T. */
export const propaneSaturationTemperature: Formula<{ readonly pressure: number }> = {
  id: 'gas.propane-saturation-temperature',
  equation: 'p(T) = p',
  inputs: {
    pressure: {
      symbol: 'p',
      kind: 'absolute-pressure',
      min: vapourPressure(LOWEST),
      max: vapourPressure(HIGHEST),
    },
  },
  result: temperature,
  source: PROPANE_VAPOUR_SOURCE,
  kernel: (x) => saturationTemperature(Math.log(x.pressure)),
};

/** ln p is nearly straight in 1/T: the secant converges in five or six steps; twenty are a bug's fence. */
function saturationTemperature(logPressure: number): number {
  let [u0, u1] = [1 / LOWEST, 1 / HIGHEST];
  let [f0, f1] = [Math.log(vapourPressure(LOWEST)), Math.log(vapourPressure(HIGHEST))];
  for (let step = 0; step < 20 && Math.abs(f1 - logPressure) > 1e-13 && f1 !== f0; step += 1) {
    const next = u1 + ((logPressure - f1) * (u1 - u0)) / (f1 - f0);
    [u0, f0] = [u1, f1];
    [u1, f1] = [next, Math.log(vapourPressure(1 / next))];
  }
  return 1 / u1;
}
