/**
 * Four heaters between two headers, direct and reverse return, solved by EPANET 2.2: the pad's own layout of a bank
 * against a network drawn pipe by pipe.
 */
import { expectOk, quantity, water } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { FOOT, INCH, MINUTE, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;

function pipe(inches: number, feet: number, k: number): water.PipeRun {
  const wall = { method: 'hazen-williams', cFactor: 150 } as const;
  return { type: 'pipe', insideDiameter: inches * INCH, length: feet * FOOT, wall, k };
}

/** Filter and heaters of the composed cases lose by the square of flow: ft at 100 gpm. */
function squareLoss(feet: number): water.LossLaw {
  return { type: 'point', flow: 100 * GPM, loss: feet * FOOT, exponent: 2 };
}

const CURVE = expectOk(
  water.pumpCurveOf(
    (
      [
        [0, 85],
        [200, 70],
        [350, 40],
      ] as const
    ).map(([gpm, feet]) => ({ flow: gpm * GPM, head: feet * FOOT })),
  ),
);

const HEADER = [pipe(3.068, 5, 0.3)];

function bank(arrangement: water.HeaterBank['arrangement']): water.HeaterBank {
  const heaters = [1, 2, 3, 4].map((n) => ({
    id: `heater ${n}`,
    loss: squareLoss(16),
    band: { least: 0, most: 1 },
    elevation: 0,
    inlet: [pipe(2.067, 3, 1.8)],
    outlet: [pipe(2.067, 3, 1.8)],
  }));
  const headers = [HEADER, HEADER, HEADER];
  return { arrangement, heaters, supplyHeader: headers, returnHeader: headers };
}

function solved(arrangement: water.HeaterBank['arrangement']): water.PadSolution {
  const last = arrangement === 'direct' ? pipe(3.068, 5, 0.3) : pipe(3.068, 20, 1.5);
  const pad = water.buildPad({
    basins: [{ id: 'pool', level: 0 }],
    suctions: [{ basin: 'pool', line: [] }],
    suction: [pipe(4.026, 60, 5)],
    pump: { curve: CURVE, elevation: 0 },
    discharge: [],
    filter: { clean: squareLoss(2), elevation: 0 },
    approach: [pipe(4.026, 6, 1.2), pipe(3.068, 5, 0.3)],
    bank: bank(arrangement),
    departure: [last, pipe(4.026, 120, 10)],
    returns: [{ basin: 'pool', line: [] }],
    temperature: 293.15,
    airPressure: 101_325,
  });
  return expectOk(water.solvePad(expectOk(pad), { speed: 1 }));
}

const PRINTED = {
  direct: { flows: [77.54323, 72.60124, 70.04082, 69.3657], total: 289.55099, head: 53.98581 },
  reverse: { flows: [71.40874, 68.95532, 68.95532, 71.40874], total: 280.72811, head: 55.81381 },
} as const;

function cases(arrangement: keyof typeof PRINTED): Case[] {
  const printed = PRINTED[arrangement];
  const flows = printed.flows.map((published, i) => ({
    id: `${arrangement} return, heater ${i + 1}, gpm`,
    published,
    computed: () => (solved(arrangement).heaters[i]?.flow ?? Number.NaN) / GPM,
  }));
  return [
    ...flows,
    {
      id: `${arrangement} return, pump, gpm`,
      published: printed.total,
      computed: () => solved(arrangement).flow / GPM,
    },
    {
      id: `${arrangement} return, pump head, ft`,
      published: printed.head,
      computed: () => solved(arrangement).pumpHead / FOOT,
    },
  ];
}

export const BANKS: Suite = {
  id: 'water/heater-banks',
  area: 'water',
  kind: 'stored',
  document: 'EPANET 2.2 solutions of composed equipment pads',
  at: 'pad07 and pad08, four heaters side by side',
  quantity: 'as named in each case',
  band: { relative: 0.005 },
  bandBecause:
    'EPANET joins the points of a loss curve by straight lines, up to 1 % over the parabola they stand on; its minor losses are worked out with g = 32.2 ft/s2.',
  cases: [...cases('direct'), ...cases('reverse')],
};
