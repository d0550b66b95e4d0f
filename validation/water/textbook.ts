/** Worked examples of a fluid-mechanics textbook and of an open hydraulics package. */
import { expectOk, numerics, quantity, water } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { CUBIC_FOOT, FOOT, INCH, MINUTE, POUND, PSI, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;

/* Cengel & Cimbala, Example 8-3: 0.2 ft3/s through 200 ft of 2 in stainless pipe. */

const DENSITY = (62.36 * POUND) / CUBIC_FOOT;
const STAINLESS = {
  insideDiameter: 2 * INCH,
  length: 200 * FOOT,
  wall: { method: 'darcy', roughness: 7e-6 * FOOT },
  viscosity: (0.0007536 * POUND) / FOOT / DENSITY,
  flow: 0.2 * CUBIC_FOOT,
} as const;
const stainless = (): water.PipeLoss => expectOk(water.pipeLoss(STAINLESS));
const pressure = (): number =>
  water.staticPressure.kernel({ height: stainless().headLoss, density: DENSITY });

const CENGEL_CASES: readonly Case[] = [
  { id: '8-3 V, ft/s', published: 9.17, computed: () => stainless().velocity / FOOT },
  { id: '8-3 Re', published: 126_400, computed: () => stainless().reynolds },
  { id: '8-3 f', published: 0.0174, computed: () => stainless().frictionFactor },
  { id: '8-3 Δp, lbf/ft2', published: 1700, computed: () => (pressure() / PSI) * 144 },
  { id: '8-3 Δp, psi', published: 11.8, computed: () => pressure() / PSI },
  { id: '8-3 h, ft', published: 27.3, computed: () => stainless().headLoss / FOOT },
  {
    id: '8-3 pumping power, W',
    published: 461,
    computed: () =>
      water.hydraulicPower.kernel({ flow: STAINLESS.flow, head: stainless().headLoss, density: DENSITY }),
  },
  {
    id: '8-6 h, m',
    published: 0.175,
    computed: () =>
      water.fittingLoss.kernel({
        k: 0.07,
        insideDiameter: 0.06,
        flow: water.flowAtVelocity.kernel({ insideDiameter: 0.06, velocity: 7 }),
      }),
  },
];

/* Vignette of the R package hydraulics: a long 20 in pipe, and a pump that lifts water 30 ft through another. */

const LONG = {
  insideDiameter: 20 * INCH,
  length: 10_560 * FOOT,
  wall: { method: 'darcy', roughness: 0.0005 * FOOT },
  viscosity: 1.22907e-5 * FOOT ** 2,
  flow: 4 * CUBIC_FOOT,
} as const;
const long = (): water.PipeLoss => expectOk(water.pipeLoss(LONG));

const PUMP_POINTS = [
  { flow: 0, head: 81 * FOOT },
  { flow: 5000 * GPM, head: 60 * FOOT },
  { flow: 7850 * GPM, head: 20 * FOOT },
];

/** The vignette takes the resistance of its main at 1 ft3/s and holds it for every flow. */
function mainLoss(): number {
  return water.darcyLoss.kernel({
    insideDiameter: 20 * INCH,
    length: 3884 * FOOT,
    roughness: 0.0005 * FOOT,
    viscosity: 1.23e-5 * FOOT ** 2,
    flow: CUBIC_FOOT,
  });
}

function runningPoint(): { flow: number; head: number } {
  const curve = expectOk(water.pumpQuadraticFit(PUMP_POINTS));
  const main: numerics.PowerLaw = { type: 'power', r: mainLoss() / CUBIC_FOOT ** 2, n: 2 };
  const network = expectOk(
    numerics.buildNetwork({
      nodes: [{ id: 'sump', fixed: 0 }, { id: 'outlet' }, { id: 'tank', fixed: 30 * FOOT }],
      links: [
        { id: 'pump', from: 'sump', to: 'outlet', law: { type: 'pump', curve, speed: 1 } },
        { id: 'main', from: 'outlet', to: 'tank', law: main },
      ],
    }),
  );
  network.solve();
  return { flow: network.flow(0) / CUBIC_FOOT, head: network.potential(1) / FOOT };
}

const VIGNETTE_CASES: readonly Case[] = [
  { id: 'pipe Re', published: 248_625, computed: () => long().reynolds },
  { id: 'pipe f', published: 0.0173, computed: () => long().frictionFactor },
  { id: 'pipe h, ft', published: 5.72, computed: () => long().headLoss / FOOT },
  { id: 'main K, s2/ft5', published: 0.16, computed: () => mainLoss() / FOOT },
  { id: 'pump flow, ft3/s', published: 12.051, computed: () => runningPoint().flow },
  { id: 'pump head, ft', published: 53.285, computed: () => runningPoint().head },
];

export const TEXTBOOK: readonly Suite[] = [
  {
    id: 'water/cengel',
    area: 'water',
    kind: 'practice',
    document: 'Cengel & Cimbala, Fluid Mechanics',
    at: 'Examples 8-3 and 8-6; inputs read in an open companion, printed answers from memory',
    quantity: 'as named in each case',
    band: { relative: 0.0025 },
    bandBecause: 'Answers of three digits, with g = 32.2 ft/s2.',
    cases: CENGEL_CASES,
  },
  {
    id: 'water/hydraulics-vignette',
    area: 'water',
    kind: 'published',
    document: 'R package hydraulics (EdM44/hydraulics, commit f055507)',
    at: 'vignette, sections 3 and 6',
    quantity: 'as named in each case',
    band: { relative: 0.003 },
    bandBecause: 'Printed to three digits at the least, with g = 32.2 ft/s2.',
    cases: VIGNETTE_CASES,
  },
];
