/** Figures of siting rules as they were printed, against what the rule in that edition asks. */
import { quantity } from '@firstfire/engine';
import { RULES } from '@firstfire/reference';
import type { Suite } from '../suite.ts';

const { FOOT, INCH } = quantity;

/** What the entry of an edition asks of a heater that stands right there, m. */
function asked(id: string, edition: string, words: Readonly<Record<string, string>> = {}): number {
  const rule = RULES.find((one) => one.id === id);
  const entry = rule?.editions.find((one) => one.edition === edition);
  if (rule === undefined || entry === undefined) return Number.NaN;
  const outcome = rule.check({ found: 0, over: 0, input: 1e5 }, words, entry.values);
  return outcome.sense === 'at-least' ? outcome.required : Number.NaN;
}

const CARRIED = {
  band: { absolute: 1e-9 },
  bandBecause: 'the same figure, carried over',
  kind: 'practice',
} as const;

const california: Suite = {
  id: 'siting/umc-2012',
  area: 'siting',
  document: '2013 California Mechanical Code (Uniform Mechanical Code 2012)',
  at: '304.1, 904.3.1.1, 922.2(3), as carried in the rules',
  quantity: 'in',
  ...CARRIED,
  cases: [
    {
      id: 'unlisted heater, sides and rear',
      published: 12,
      computed: () => asked('place.unlisted-clearance', 'UMC 2012', { listed: 'no' }) / INCH,
    },
    {
      id: 'base above the ground',
      published: 3,
      computed: () => asked('place.base-height', 'UMC 2012') / INCH,
    },
    { id: 'service space', published: 30, computed: () => asked('place.service-room', 'UMC 2012') / INCH },
  ],
};

const canada: Suite = {
  id: 'siting/b149-outdoor-pool-heater',
  area: 'siting',
  document: 'CSA B149.1, as quoted in trade articles',
  at: '7.25 and 8.14.10, as carried in the rules',
  quantity: 'mm',
  ...CARRIED,
  // The articles print 3 m and, of an earlier edition, 10 ft for one and the same distance.
  band: { absolute: 50 },
  bandBecause: '3 m and 10 ft are printed for the same distance',
  cases: [
    { id: 'property line', published: 450, computed: () => asked('place.property-line', 'B149.1-20') * 1000 },
    {
      id: 'flue to a building opening',
      published: 3000,
      computed: () => asked('air.flue-from-openings', 'B149.1-20', { terminal: 'outdoors' }) * 1000,
    },
  ],
};

const recalled: Suite = {
  id: 'siting/from-memory',
  area: 'siting',
  document: 'International Fuel Gas Code; NFPA 58; from memory',
  at: '305.3, 305.7; Table 6.3.4.3, as carried in the rules',
  quantity: 'ft',
  ...CARRIED,
  cases: [
    {
      id: 'flame above a garage floor',
      published: 1.5,
      computed: () => asked('place.ignition-height', 'IFGC 2015') / FOOT,
    },
    {
      id: 'base above the ground',
      published: 0.25,
      computed: () => asked('place.base-height', 'IFGC 2015') / FOOT,
    },
    {
      id: 'container relief to a flame',
      published: 10,
      computed: () => asked('place.propane-tank', 'any') / FOOT,
    },
  ],
};

export const RULE_FIGURE_SUITES: readonly Suite[] = [california, canada, recalled];
