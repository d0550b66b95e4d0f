/** What covers keep in and out, through the balance of a covered and a bare surface. */
import { expectOk, heat, properties } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const STATE: heat.SurfaceState = {
  waterTemperature: 300.15,
  airTemperature: 293.15,
  vapourPressure: properties.vapourPressureAt(293.15, 0.5),
  pressure: 101_325,
  airSpeed: 1,
  activity: 1,
  skyTemperature: 280,
  sun: 600,
  covered: 0,
  groundTemperature: 288.15,
  mainsTemperature: 285.15,
};

/** Share of a flow that a cover takes away, %. */
function taken(cover: heat.CoverName, flow: 'evaporation' | 'sun'): number {
  const setting = { ...heat.PLAIN_SURFACE, area: 50, cover: heat.COVERS[cover] };
  const bare = expectOk(heat.surfaceBalance(setting, STATE));
  const covered = expectOk(heat.surfaceBalance(setting, { ...STATE, covered: 1 }));
  return 100 * (1 - covered[flow] / bare[flow]);
}

const evaporation = (cover: heat.CoverName) => () => taken(cover, 'evaporation');

export const COVER_SUITES: readonly Suite[] = [
  {
    id: 'heat/cover-evaporation',
    area: 'heat',
    kind: 'published',
    document: 'Muleta (2016), Cal Poly National Pool Industry Research Center',
    at: 'eight pools, 90 days, covers always on; as reported at aquaticsintl.com',
    quantity: 'evaporation taken away, %',
    band: { absolute: 0.8 },
    bandBecause: 'the two figures of the liquid lie 1.4 apart and one share is carried for both',
    cases: [
      { id: 'foam', published: 95.9, computed: evaporation('foam') },
      { id: 'bubble', published: 94.9, computed: evaporation('bubble') },
      { id: 'solid track', published: 93.9, computed: evaporation('track') },
      { id: 'solar discs', published: 50.1, computed: evaporation('discs') },
      { id: 'liquid, low', published: 14.4, computed: evaporation('liquid') },
      { id: 'liquid, high', published: 15.8, computed: evaporation('liquid') },
    ],
  },
  {
    id: 'heat/cover-sun',
    area: 'heat',
    kind: 'published',
    document: 'US DOE RSPEC figures',
    at: 'as quoted at recmanagement.com/feature/200611fe01/12; the middle of each printed range',
    quantity: 'sun taken away by an opaque cover, and sun a bare outdoor pool keeps, %',
    band: { absolute: 10 },
    bandBecause: 'half the width of the printed ranges (20 to 40 and 75 to 85)',
    cases: [
      { id: 'opaque vinyl', published: 30, computed: () => taken('track', 'sun') },
      {
        id: 'sun kept by a bare pool',
        published: 80,
        computed: () => 100 * heat.absorbedSunHeat(heat.PLAIN_SURFACE, 1),
      },
    ],
  },
  {
    id: 'heat/cover-sun-bubble',
    area: 'heat',
    kind: 'practice',
    document: 'US DOE RSPEC figures',
    at: 'transparent bubble, 5 to 15 %, from memory',
    quantity: 'sun taken away, %',
    band: { absolute: 5 },
    bandBecause: 'half the width of the range',
    cases: [{ id: 'transparent bubble', published: 10, computed: () => taken('bubble', 'sun') }],
  },
];
