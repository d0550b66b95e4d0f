/** Hazen–Williams as four sources print it, each worked out from its own print, outside the project. */
import { quantity, water } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { FOOT, INCH, MINUTE, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;

/** Bore (in), gpm, then feet of head in 100 ft at C = 150 by each form, and the velocity (ft/s). */
const TABLE: readonly {
  readonly inches: number;
  readonly gpm: number;
  readonly epanet: number;
  readonly plasticPipe: number;
  readonly sprinkler: number;
  readonly metric: number;
  readonly fps: number;
}[] = [
  {
    inches: 1.049,
    gpm: 15,
    epanet: 11.6526,
    plasticPipe: 11.7383,
    sprinkler: 11.6683,
    metric: 11.6139,
    fps: 5.568,
  },
  {
    inches: 1.61,
    gpm: 40,
    epanet: 8.8933,
    plasticPipe: 8.9799,
    sprinkler: 8.8917,
    metric: 8.8676,
    fps: 6.304,
  },
  {
    inches: 2.067,
    gpm: 60,
    epanet: 5.5797,
    plasticPipe: 5.6418,
    sprinkler: 5.5756,
    metric: 5.5649,
    fps: 5.737,
  },
  {
    inches: 2.067,
    gpm: 85,
    epanet: 10.6355,
    plasticPipe: 10.7538,
    sprinkler: 10.6202,
    metric: 10.6074,
    fps: 8.127,
  },
  {
    inches: 2.469,
    gpm: 110,
    epanet: 7.2142,
    plasticPipe: 7.3016,
    sprinkler: 7.2014,
    metric: 7.1964,
    fps: 7.371,
  },
  {
    inches: 3.068,
    gpm: 180,
    epanet: 6.2344,
    plasticPipe: 6.3174,
    sprinkler: 6.2185,
    metric: 6.2203,
    fps: 7.812,
  },
  {
    inches: 4.026,
    gpm: 320,
    epanet: 4.8161,
    plasticPipe: 4.8876,
    sprinkler: 4.7996,
    metric: 4.8066,
    fps: 8.065,
  },
];

const FORMS = ['epanet', 'plasticPipe', 'sprinkler', 'metric'] as const;

const LOSSES: readonly Case[] = FORMS.flatMap((form) =>
  TABLE.map((row) => ({
    id: `${form}, ${row.inches} in, ${row.gpm} gpm`,
    published: row[form],
    computed: () =>
      water.hazenWilliamsBy(water.HAZEN_WILLIAMS_FORMS[form], {
        insideDiameter: row.inches * INCH,
        length: 100 * FOOT,
        cFactor: 150,
        flow: row.gpm * GPM,
      }) / FOOT,
  })),
);

const VELOCITIES: readonly Case[] = TABLE.map((row) => ({
  id: `${row.inches} in, ${row.gpm} gpm`,
  published: row.fps,
  computed: () => water.velocity.kernel({ insideDiameter: row.inches * INCH, flow: row.gpm * GPM }) / FOOT,
}));

const SOURCE = {
  area: 'water',
  kind: 'stored',
  document: 'Hazen–Williams forms (EPANET 2 manual; PPFA; NFPA 13; SI)',
} as const;

export const HAZEN_WILLIAMS: readonly Suite[] = [
  {
    ...SOURCE,
    id: 'water/hazen-williams-forms',
    at: 'each form worked out from its printed constants',
    quantity: 'head loss, ft per 100 ft',
    band: { relative: 5e-4 },
    bandBecause: 'Feet of water to a psi and cubic feet to a gallon were rounded to four digits.',
    cases: LOSSES,
  },
  {
    ...SOURCE,
    id: 'water/velocity-form',
    at: 'ft/s = 0.4085·gpm/in²',
    quantity: 'velocity, ft/s',
    band: { relative: 2e-4 },
    bandBecause: 'The constant is printed to four digits.',
    cases: VELOCITIES,
  },
];
