/** Propane: vapour pressure over the liquid, and what a tank boils off. */
import { gas, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const { BTU, HOUR, INCH, PSI } = quantity;
const kelvin = (f: number): number => (f + 459.67) / 1.8;

/** °F → psi gauge at sea level, pure propane; the heading of 0 °F is lost in the copy, its place in the row is not. */
const VAPOUR_CHART: readonly (readonly [number, number])[] = [
  [-30, 6.8],
  [-20, 11.5],
  [-10, 17.5],
  [0, 24.5],
  [10, 34],
  [20, 42],
  [30, 53],
  [40, 65],
  [50, 78],
  [60, 93],
  [70, 110],
  [80, 128],
  [90, 150],
  [100, 177],
  [110, 204],
];

const vapourGauge = (f: number): number => propaneAbsolute(f) / PSI - 14.696;

function propaneAbsolute(f: number): number {
  return gas.propaneVapourPressure.kernel({ temperature: kelvin(f) });
}

const VAPOUR_SUITE: Suite = {
  id: 'gas/propane-vapour-chart',
  area: 'gas',
  kind: 'published',
  document: 'Propane information page of a burner dealer',
  at: 'vapour-pressure chart, 100 % propane',
  quantity: 'pressure, psi gauge',
  band: { absolute: 1.2, relative: 0.025 },
  bandBecause: 'A trade chart read to whole psi; its steps (7, 9.5, 8, 11) show a scatter of a psi.',
  cases: VAPOUR_CHART.map(([f, published]) => ({ id: `${f} °F`, published, computed: () => vapourGauge(f) })),
  misfits: [
    {
      cases: ['10 °F'],
      because: 'The 34 psi stand a psi above the line between their neighbours, 24.5 and 42.',
    },
  ],
};

/** log10 p(mmHg) = 36.007 − 1737.2/T − 11.666·log10 T + 0.0085187·T, fitted to 105 measured points. */
function measuredFit(celsius: number): number {
  const t = celsius + 273.15;
  const mmHg = 10 ** (36.007 - 1737.2 / t - 11.666 * Math.log10(t) + 0.0085187 * t);
  return (mmHg * 101.325) / 760;
}

const FIT_SUITE: Suite = {
  id: 'gas/propane-vapour-fit',
  area: 'gas',
  // The figures are worked out from a printed equation, not printed themselves: shown, not counted.
  kind: 'practice',
  document: 'Handbook of a hydrocarbon dew-point analyser',
  at: 'vapour pressure of propane, equation fitted to 105 points with an average deviation of 0.46 %',
  quantity: 'pressure, kPa absolute',
  band: { relative: 0.01 },
  bandBecause: 'Twice the average deviation that the equation claims.',
  cases: [-40, -20, 0, 20, 40].map((celsius) => ({
    id: `${celsius} °C`,
    published: measuredFit(celsius),
    computed: () => gas.propaneVapourPressure.kernel({ temperature: celsius + 273.15 }) / 1000,
  })),
};

const TANK = { diameter: 37 * INCH, length: 120 * INCH };

/** The factors of the rule, in per cent of D·L·100 at 0 °F. */
function rulePercent(fill: number, f: number): number {
  const found = gas.tankVaporisation.kernel({ ...TANK, fill, airTemperature: kelvin(f) });
  return ((found / BTU) * HOUR) / (37 * 120);
}

const RULE_SUITE: Suite = {
  id: 'gas/tank-trade-rule',
  area: 'gas',
  kind: 'practice',
  document: 'Trade rule of tank vaporisation',
  at: 'from memory: K by fill, factor by temperature',
  quantity: 'Btu/h for each square inch of D·L',
  band: { absolute: 1e-6 },
  bandBecause: 'Printed factors, met at their own points.',
  cases: [
    ...(
      [
        [0.1, 45],
        [0.2, 60],
        [0.3, 70],
        [0.4, 80],
        [0.5, 90],
        [0.6, 100],
      ] as const
    ).map(([fill, k]) => ({
      id: `K at ${fill * 100} %`,
      published: k,
      computed: () => rulePercent(fill, 0),
    })),
    ...(
      [
        [-15, 0.25],
        [-10, 0.5],
        [-5, 0.75],
        [5, 1.25],
        [10, 1.5],
        [15, 1.75],
        [20, 2],
      ] as const
    ).map(([f, factor]) => ({
      id: `factor at ${f} °F`,
      published: factor * 100,
      computed: () => rulePercent(0.6, f),
    })),
  ],
};

/** Pounds in a 100 lb cylinder → Btu/h at 0, 20, 40, 60, 70 °F. */
const CYLINDER_CHART: Readonly<Record<number, readonly number[]>> = {
  100: [113_000, 167_000, 214_000, 277_000, 300_000],
  90: [104_000, 152_000, 200_000, 247_000, 277_000],
  80: [94_000, 137_000, 180_000, 214_000, 236_000],
  70: [83_000, 122_000, 160_000, 199_000, 214_000],
  60: [75_000, 109_000, 140_000, 176_000, 192_000],
  50: [64_000, 94_000, 125_000, 154_000, 167_000],
  40: [55_000, 79_000, 105_000, 131_000, 141_000],
  30: [45_000, 66_000, 85_000, 107_000, 118_000],
  20: [36_000, 51_000, 68_000, 83_000, 92_000],
  10: [28_000, 38_000, 49_000, 60_000, 66_000],
};

/** Wetted area of a standing cylinder 14.5 in wide: its foot and the wall up to the liquid (4.24 lb a gallon). */
function standingArea(pounds: number): number {
  const diameter = 14.5 * INCH;
  const liquid = (pounds / 4.24) * quantity.US_GALLON;
  const foot = (Math.PI / 4) * diameter ** 2;
  return foot + (4 * liquid) / diameter;
}

const CYLINDER_SUITE: Suite = {
  id: 'gas/propane-cylinder-chart',
  area: 'gas',
  kind: 'practice',
  document: 'Propane information page of a burner dealer',
  at: 'continuous draw of a 100 lb cylinder; its width is ours, from memory',
  quantity: 'draw, Btu/h',
  band: { relative: 0.25 },
  bandBecause: 'U and the shape of the cylinder are estimates; the chart calls itself approximate.',
  cases: Object.entries(CYLINDER_CHART).flatMap(([pounds, row]) =>
    row.map((published, column) => {
      const f = [0, 20, 40, 60, 70][column] ?? Number.NaN;
      return {
        id: `${pounds} lb ${f} °F`,
        published,
        computed: () => {
          const heat = gas.shellVaporisation.kernel({
            area: standingArea(Number(pounds)),
            transmittance: gas.SHELL_TRANSMITTANCE,
            airTemperature: kelvin(f),
            // The liquid may cool to its boiling point: the draw ends when the pressure does.
            liquidTemperature: kelvin(-43.8),
          });
          return (heat / BTU) * HOUR;
        },
      };
    }),
  ),
};

export const PROPANE_SUITES: readonly Suite[] = [VAPOUR_SUITE, FIT_SUITE, RULE_SUITE, CYLINDER_SUITE];
