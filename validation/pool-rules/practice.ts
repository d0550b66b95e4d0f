/** What the trade goes by and no document says: shown, never counted. */
import { quantity, water } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { FAHRENHEIT_STEP, FOOT, INCH, MINUTE, PSI, US_GALLON } = quantity;
const GPM = US_GALLON / MINUTE;

const HEADER = 2.067 * INCH;

const CASES: readonly Case[] = [
  {
    id: '125 gpm, the most a 2 in header takes before an outside bypass is needed, ft/s',
    published: 12,
    computed: () => water.velocity.kernel({ insideDiameter: HEADER, flow: 125 * GPM }) / FOOT,
  },
  {
    id: 'psi that the water-pressure switch must be moved for each foot the heater stands above or below the pool',
    published: 0.433,
    computed: () => water.staticPressure.kernel({ height: FOOT, density: 999.016 }) / PSI,
  },
  {
    id: 'warmest water a control may be set to, °F',
    published: 104,
    computed: () => catalog.water.WARMEST_WATER.temperature / FAHRENHEIT_STEP - 459.67,
  },
];

export const PRACTICE: Suite = {
  id: 'pool-rules/practice',
  area: 'pool-rules',
  kind: 'practice',
  document: 'Common practice, no source',
  at: 'heater header, pressure switch, temperature limit',
  quantity: 'as named in each case',
  band: { relative: 0.005 },
  bandBecause:
    '"About"; 12 ft/s is far above the 8 ft/s usual for returns, so that its last digit matters to nobody.',
  cases: CASES,
};
