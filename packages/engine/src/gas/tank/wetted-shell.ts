/**
 * What a propane tank boils off, by the heat that its wetted shell takes from the air.
 *
 *     heat taken = U · A(fill) · (T_air − T_liquid)        fuel = heat taken · H / r
 *
 * with H the gross heat of combustion and r the heat of vaporisation: a joule taken in lets 117 J of fuel boil off.
 * Under a steady draw the liquid cools until it takes in what the draw carries off; its temperature sets the pressure
 * in the tank. The most it can supply is had when the liquid is as cold as the pressure still needed allows.
 *
 * A is the wetted part of a lying cylinder of the overall length, with its two flat ends; dished ends are a little
 * less long and a little more curved.
 *
 * Source: geometry and heat balance; r and H as in a printed list of propane's properties (184 and 21,548 Btu/lb,
 * read in a public copy). U = 2 Btu/(h ft2 °F) is *common practice, no source*; it reproduces a published chart of
 * 100 lb cylinders within its scatter when the liquid may cool to its boiling point.
 * Range: diameter 0.2 to 3 m, length 0.3 to 20 m, fill 1 to 95 %, −45 to 50 °C.
 * Errors: range issues; air no warmer than the liquid is allowed to be is `no-solution`.
 *
 * Worked example: 37 in by 120 in, half full, air 0 °F, liquid −20 °F, U = 2 → 0.26 million Btu/h.
 */
import { BTU, FAHRENHEIT_STEP, HOUR, POUND, SQUARE_FOOT } from '../../quantity/index.ts';
import { type Formula, type Source, traced } from '../../trace/index.ts';

/** U, W/(m2 K). */
export const SHELL_TRANSMITTANCE = (2 * BTU) / HOUR / SQUARE_FOOT / FAHRENHEIT_STEP;

const HEAT_OF_VAPORISATION = (184 * BTU) / POUND;
const HEAT_OF_COMBUSTION = (21_548 * BTU) / POUND;
/** Fuel boiled off, W of gross heat, for each watt taken in. */
const GAIN = HEAT_OF_COMBUSTION / HEAT_OF_VAPORISATION;

export const WETTED_SHELL_SOURCE: Source = {
  document: 'Heat balance of the wetted shell',
  at: 'transmittance 2 Btu/(h ft2 °F)',
  known: 'common practice, no source',
};

const area = { symbol: 'A', kind: 'area', min: 0.01, max: 500 } as const;
const transmittance = { symbol: 'U', kind: 'transmittance', min: 1, max: 100 } as const;
const air = { symbol: 'Ta', kind: 'temperature', min: 228, max: 323 } as const;
const liquid = { symbol: 'Tl', kind: 'temperature', min: 200, max: 323 } as const;

export interface TankShell {
  readonly diameter: number;
  readonly length: number;
  /** Liquid over water volume. */
  readonly fill: number;
}

/** Wetted area (m2) of a lying tank. */
export const wettedArea: Formula<TankShell> = {
  id: 'gas.wetted-area',
  equation: 'A = D·L·φ/2 + D²/4·(φ − sin φ), (φ − sin φ)/2π = x',
  inputs: {
    diameter: { symbol: 'D', kind: 'diameter', min: 0.2, max: 3 },
    length: { symbol: 'L', kind: 'length', min: 0.3, max: 20 },
    fill: { symbol: 'x', kind: 'ratio', min: 0.01, max: 0.95 },
  },
  result: area,
  source: { document: 'Geometry', at: 'segment of a circle', known: 'physics' },
  kernel: (x) => {
    const angle = segmentAngle(x.fill);
    const ends = (x.diameter ** 2 / 4) * (angle - Math.sin(angle));
    return (x.diameter * x.length * angle) / 2 + ends;
  },
};

/** Angle (rad) at the centre that a segment of a given share of the circle spans; bisection to rounding. */
export function segmentAngle(share: number): number {
  let [low, high] = [0, 2 * Math.PI];
  for (let step = 0; step < 52; step += 1) {
    const middle = (low + high) / 2;
    if (middle - Math.sin(middle) < 2 * Math.PI * share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export interface ShellHeat {
  readonly area: number;
  readonly transmittance: number;
  readonly airTemperature: number;
  /** Coldest the liquid may become, K. */
  readonly liquidTemperature: number;
}

/** Heat input (W, gross, as fuel) that boils off through the shell. */
export const shellVaporisation: Formula<ShellHeat> = {
  id: 'gas.shell-vaporisation',
  equation: 'P = U·A·(Ta − Tl)·H/r',
  inputs: { area, transmittance, airTemperature: air, liquidTemperature: liquid },
  result: { symbol: 'P', kind: 'heat-rate' },
  source: WETTED_SHELL_SOURCE,
  kernel: (x) => {
    const difference = x.airTemperature - x.liquidTemperature;
    return difference > 0 ? x.transmittance * x.area * difference * GAIN : Number.NaN;
  },
};

export interface ShellDraw {
  readonly area: number;
  readonly transmittance: number;
  readonly airTemperature: number;
  /** Fuel drawn, W of gross heat. */
  readonly heatInput: number;
}

/** Temperature (K) that the liquid settles at under a steady draw. */
export const liquidUnderDraw: Formula<ShellDraw> = {
  id: 'gas.liquid-under-draw',
  equation: 'Tl = Ta − P·r/(H·U·A)',
  inputs: {
    area,
    transmittance,
    airTemperature: air,
    heatInput: { symbol: 'P', kind: 'heat-rate', min: 0, max: 1e8 },
  },
  result: liquid,
  source: WETTED_SHELL_SOURCE,
  kernel: (x) => x.airTemperature - x.heatInput / (GAIN * x.transmittance * x.area),
};

/** The wetted-shell estimate from the tank's measures, as one call with its steps recorded. */
export const wettedShellVaporisation: Formula<
  TankShell & {
    readonly transmittance: number;
    readonly airTemperature: number;
    readonly liquidTemperature: number;
  }
> = {
  id: 'gas.wetted-shell-vaporisation',
  equation: 'P = U·A(D, L, x)·(Ta − Tl)·H/r',
  inputs: { ...wettedArea.inputs, transmittance, airTemperature: air, liquidTemperature: liquid },
  result: shellVaporisation.result,
  source: WETTED_SHELL_SOURCE,
  kernel: ({ diameter, length, fill, ...heat }, recorder) => {
    const wetted = traced(wettedArea, { diameter, length, fill }, recorder);
    return traced(shellVaporisation, { area: wetted, ...heat }, recorder);
  },
};
