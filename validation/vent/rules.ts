/** Lengths of connectors, heights of caps, and the constant of the handbook's equation. */
import { air, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Suite } from '../suite.ts';

const { BTU, FOOT, HOUR, INCH, INCH_OF_MERCURY, INCH_OF_WATER, POUND } = quantity;

/** Diameter (in) and longest horizontal run (ft). */
const CONNECTORS = [
  [3, 4.5],
  [4, 6],
  [5, 7.5],
  [6, 9],
  [7, 10.5],
  [8, 12],
  [9, 13.5],
  [10, 15],
  [12, 18],
  [14, 21],
  [16, 24],
  [18, 27],
  [20, 30],
  [22, 33],
  [24, 36],
] as const;

/** The steepest roof of each row, rise on a run of 12, and the height of the cap over it (ft). */
const CAPS = [
  [6, 1],
  [7, 1.25],
  [8, 1.5],
  [9, 2],
  [10, 2.5],
  [11, 3.25],
  [12, 4],
  [14, 5],
  [16, 6],
  [18, 7],
  [20, 7.5],
  [21, 8],
] as const;

/** I = 4.13e5·(d²/M)·√(Δp·B/(k·Tm)) in Btu/h, in, lb a thousand Btu, in w.c., inHg and °R. */
function designConstant(): number {
  const massFlow = air.ventFlow.kernel({
    draught: INCH_OF_WATER,
    diameter: INCH,
    lossCoefficient: 1,
    gasTemperature: 1 / 1.8,
    atmosphere: INCH_OF_MERCURY,
  });
  const massPerHeat = POUND / (1000 * BTU);
  return (air.ventHeatInput.kernel({ massFlow, massPerHeat }) * HOUR) / BTU;
}

export const VENT_RULES: readonly Suite[] = [
  {
    id: 'vent/connector-length',
    carried: true,
    area: 'vent',
    kind: 'published',
    document: 'NFPA 54-2012',
    at: 'Table 13.2.2, in the 2013 California Plumbing Code',
    quantity: 'longest horizontal run, ft',
    band: { relative: 1e-9 },
    bandBecause: 'exact figures',
    cases: CONNECTORS.map(([inch, feet]) => ({
      id: `${inch} in`,
      published: feet,
      computed: () => (air.CONNECTOR_LENGTH_BY_DIAMETER * inch * INCH) / FOOT,
    })),
  },
  {
    id: 'vent/roof-pitch',
    carried: true,
    area: 'vent',
    kind: 'published',
    document: 'NFPA 54-2012',
    at: 'Table 12.7.2, in the 2018 IRC and the 2013 California Plumbing Code',
    quantity: 'height of the cap above the roof, ft',
    band: { relative: 1e-9 },
    bandBecause: 'exact figures',
    cases: CAPS.map(([rise, feet], index) => ({
      id: `just above ${CAPS[index - 1]?.[0] ?? 0}/12, to ${rise}/12`,
      published: feet,
      computed: () => {
        const gentlest = ((CAPS[index - 1]?.[0] ?? 0) + 0.01) / 12;
        const [atStart, atEnd] = [gentlest, rise / 12].map(catalog.air.leastCapHeight);
        return atStart === atEnd ? (atEnd ?? Number.NaN) / FOOT : Number.NaN;
      },
    })),
  },
  {
    id: 'vent/chimney-constant',
    area: 'vent',
    kind: 'practice',
    document: 'ASHRAE Handbook – HVAC Systems and Equipment',
    at: 'chimneys, design equation and mass flow behind a draught hood, from memory',
    quantity: 'as each case says',
    band: { relative: 0.0025 },
    bandBecause: 'three digits',
    cases: [
      { id: 'constant of the design equation', published: 4.13e5, computed: designConstant },
      {
        id: 'flue gas at 5.3 % CO2, lb a thousand Btu',
        published: 1.54,
        computed: () =>
          air.flueGasMass.kernel({ carbonDioxide: 0.053, ...air.FLUE_GAS.natural }) / (POUND / (1000 * BTU)),
      },
    ],
  },
];
