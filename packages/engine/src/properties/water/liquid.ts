/**
 * Liquid water at atmospheric pressure: density, specific heat, enthalpy, viscosity, thermal conductivity.
 *
 * Pool water holds up to a few kilograms of salts a cubic metre, which no heat or flow calculation here notices;
 * sea water (2.7 % denser, 4.6 % less specific heat) is not covered.
 *
 * Equations: one fundamental form for v, h and cp, in α = 10/(593 K − T) and β = 10/(T − 232 K), and two sums of
 * powers of T/300 K for viscosity and conductivity:
 *
 *     v = R·10/p0·(a5 + Σ aᵢ·αⁿ + Σ bᵢ·βᵐ)          cp = −R·T/10·(10·c3/T + Σ n(n+1)·aᵢ·αⁿ⁺² + Σ m(m+1)·bᵢ·βᵐ⁺²)
 *     μ = 10⁻⁶·Σ aᵢ·(T/300)^bᵢ                      λ = Σ cᵢ·(T/300)^dᵢ
 *
 * How sources disagree: IAPWS-IF97, the industrial form, lies up to 1.3e-5 over this one in density and 4e-4 under it
 * in specific heat (both at 50 °C). This form follows IAPWS-95, the scientific one, and is closed in temperature
 * alone; a table of the other is then an outside check of it.
 *
 * Source: IAPWS SR6-08(2011), Equations 1 to 8, Tables 1 to 5.
 * Range: 0 to 100 °C, at 0.1 MPa (the source holds it to 0.3 MPa; water is 5e-10 denser a pascal more).
 * Errors: outside 273.15 to 373.15 K an issue of `evaluate`; the plain functions check nothing.
 *
 * Worked example: 25 °C → 997.047 kg/m3, 4181.4 J/(kg K), 0.8900 mPa s, 0.6065 W/(m K).
 */
import type { Formula, Source, Variable } from '../../trace/index.ts';

const SOURCE: Source = {
  document: 'IAPWS SR6-08(2011), Properties of Liquid Water at 0.1 MPa',
  at: 'Equations 1 to 8, Tables 1 to 5',
  known: 'read in a public copy',
};

/** R, J/(kg K), as the release uses it. */
const GAS_CONSTANT = 461.51805;
const SCALE = 10;
const REFERENCE_PRESSURE = 1e5;

export interface AtTemperature {
  /** T, K. */
  readonly temperature: number;
}

/** Water as a liquid, K. */
const temperature: Variable = { symbol: 'T', kind: 'temperature', min: 273.15, max: 373.15 };

/** ρ (kg/m3) at T (K): `waterDensity` without its checks. */
export function densityOfWater(T: number): number {
  const a = SCALE / (593 - T);
  const b = SCALE / (T - 232);
  const high =
    a ** 4 *
    (6744.58446 + a * (-222521.604 + a * a * (1.00231247e8 + a * (-1.63552118e9 + a * 8.32299658e9))));
  const low =
    b *
    (5.78545292e-3 +
      b *
        (-1.53195665e-2 +
          b * (3.11337859e-2 + b * (-4.23546241e-2 + b * (3.38713507e-2 - b * 1.19946761e-2)))));
  return REFERENCE_PRESSURE / (GAS_CONSTANT * SCALE * (1.93763157e-2 + high + low));
}

/** cp (J/(kg K)) at T (K): `waterSpecificHeat` without its checks. */
export function specificHeatOfWater(T: number): number {
  const a = SCALE / (593 - T);
  const b = SCALE / (T - 232);
  const high = a ** 6 * (20 * -166147.0539 + a * (30 * 2.70878164e6 - a * a * 56 * 1.557191544e8));
  const low =
    b ** 4 * (6 * -0.8237426256 + b * (12 * 1.908956353 + b * (20 * -2.017597384 + b * 30 * 0.8546361348)));
  return -GAS_CONSTANT * (T / SCALE) * ((SCALE * -8.983025854) / T + high + low);
}

/** h (J/kg) at T (K) over the liquid at the triple point: `waterEnthalpy` without its checks. */
export function enthalpyOfWater(T: number): number {
  const a = SCALE / (593 - T);
  const b = SCALE / (T - 232);
  const t = T / SCALE;
  const gibbs = a ** 4 * (-166147.0539 + a * (2.70878164e6 - a * a * 1.557191544e8));
  const gibbsLow = b * b * (-0.8237426256 + b * (1.908956353 + b * (-2.017597384 + b * 0.8546361348)));
  const slope = a ** 5 * (4 * -166147.0539 + a * (5 * 2.70878164e6 - a * a * 7 * 1.557191544e8));
  const slopeLow =
    b ** 3 * (2 * -0.8237426256 + b * (3 * 1.908956353 + b * (4 * -2.017597384 + b * 5 * 0.8546361348)));
  return GAS_CONSTANT * SCALE * (-245.2093414 + 8.983025854 * t + gibbs + gibbsLow - t * (slope - slopeLow));
}

/** μ (Pa s) at T (K): `waterDynamicViscosity` without its checks. */
export function viscosityOfWater(T: number): number {
  const t = T / 300;
  return 1e-6 * (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40);
}

/** λ (W/(m K)) at T (K): `waterThermalConductivity` without its checks. */
export function conductivityOfWater(T: number): number {
  const t = T / 300;
  return 1.663 * t ** -1.15 - 1.7781 * t ** -3.4 + 1.1567 * t ** -6 - 0.432115 * t ** -7.6;
}

/** Density of liquid water, kg/m3. Stated uncertainty 1e-6. */
export const waterDensity: Formula<AtTemperature> = {
  id: 'properties.water-density',
  equation: 'ρ = p0/(10·R·(a5 + Σ aᵢ·αⁿ + Σ bᵢ·βᵐ))',
  inputs: { temperature },
  result: { symbol: 'ρ', kind: 'density' },
  source: SOURCE,
  kernel: (x) => densityOfWater(x.temperature),
};

/** Specific heat of liquid water at constant pressure, J/(kg K). Stated uncertainty 0.1 %. */
export const waterSpecificHeat: Formula<AtTemperature> = {
  id: 'properties.water-specific-heat',
  equation: 'cp = −R·T/10·(10·c3/T + Σ n(n+1)·aᵢ·αⁿ⁺² + Σ m(m+1)·bᵢ·βᵐ⁺²)',
  inputs: { temperature },
  result: { symbol: 'cp', kind: 'specific-heat' },
  source: SOURCE,
  kernel: (x) => specificHeatOfWater(x.temperature),
};

/**
 * Enthalpy of liquid water over that of the liquid at the triple point, J/kg. The heat between two temperatures is
 * the difference of two of these, which `cp·ΔT` at one of them only approaches.
 */
export const waterEnthalpy: Formula<AtTemperature> = {
  id: 'properties.water-enthalpy',
  equation: 'h = g − T·∂g/∂T',
  inputs: { temperature },
  result: { symbol: 'h', kind: 'latent-heat' },
  source: SOURCE,
  kernel: (x) => enthalpyOfWater(x.temperature),
};

/** Dynamic viscosity of liquid water, Pa s. Stated uncertainty 1 %. */
export const waterDynamicViscosity: Formula<AtTemperature> = {
  id: 'properties.water-dynamic-viscosity',
  equation: 'μ = 10⁻⁶·Σ aᵢ·(T/300)^bᵢ',
  inputs: { temperature },
  result: { symbol: 'μ', kind: 'dynamic-viscosity' },
  source: SOURCE,
  kernel: (x) => viscosityOfWater(x.temperature),
};

/** Thermal conductivity of liquid water, W/(m K). Stated uncertainty 1.5 %. */
export const waterThermalConductivity: Formula<AtTemperature> = {
  id: 'properties.water-thermal-conductivity',
  equation: 'λ = Σ cᵢ·(T/300)^dᵢ',
  inputs: { temperature },
  result: { symbol: 'λ', kind: 'thermal-conductivity' },
  source: SOURCE,
  kernel: (x) => conductivityOfWater(x.temperature),
};
