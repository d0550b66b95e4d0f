/** Limits of pool codes as they are printed, against those the catalogue carries in SI. */
import { quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { FOOT, HOUR, PSI } = quantity;
const {
  FILTER_RULES,
  FLOW_METER_RULE,
  FREEZE_RULE,
  SUCTION_OUTLET_RULE,
  TURNOVER_LIMITS,
  turnoverByDepth,
  VELOCITY_LIMITS,
} = catalog.water;

/** Hours. */
const WISCONSIN = {
  swimming: 6,
  activity: 2,
  'interactive-play': 0.5,
  'lap-lanes': 6,
  'leisure-river': 2,
  plunge: 1,
  'runout-slide': 1,
  vortex: 1,
  wave: 2,
  'cold-soak': 4,
  wading: 1,
  whirlpool: 0.5,
};

function turnover(document: string, use: string, published: number): Case {
  const found = TURNOVER_LIMITS.find((one) => one.use === use && one.source.document.startsWith(document));
  return { id: `${document}, ${use}, h`, published, computed: () => (found?.time ?? Number.NaN) / HOUR };
}

function velocity(document: string, line: string, published: number): Case {
  const found = VELOCITY_LIMITS.find((one) => one.line === line && one.source.document.startsWith(document));
  return {
    id: `${document}, ${line}, ft/s`,
    published,
    computed: () => (found?.velocity ?? Number.NaN) / FOOT,
  };
}

function filter(name: string, published: number): Case {
  const found = FILTER_RULES.find((one) => one.filter === name);
  return { id: `Wyoming, ${name}, psi`, published, computed: () => (found?.pressure ?? Number.NaN) / PSI };
}

const OTHERS: readonly Case[] = [
  { id: 'D.C., 3 ft deep, h', published: 4.5, computed: () => turnoverByDepth(3 * FOOT) / HOUR },
  { id: 'D.C., 5 ft deep, h', published: 6, computed: () => turnoverByDepth(5 * FOOT) / HOUR },
  { id: 'flow meter over design flow', published: 1.5, computed: () => FLOW_METER_RULE.capacityOverDesign },
  { id: 'flow meter accuracy, %', published: 5, computed: () => 100 * FLOW_METER_RULE.accuracy },
  { id: 'meter, diameters before', published: 10, computed: () => FLOW_METER_RULE.diametersBefore },
  { id: 'meter, diameters after', published: 5, computed: () => FLOW_METER_RULE.diametersAfter },
  { id: 'drains apart, ft', published: 3, computed: () => SUCTION_OUTLET_RULE.leastSpacing / FOOT },
  { id: 'freeze, °F', published: 40, computed: () => FREEZE_RULE.airTemperature * 1.8 - 459.67 },
  { id: 'freeze, h', published: 1, computed: () => FREEZE_RULE.run / HOUR },
  { id: 'freeze, share of speed', published: 0.5, computed: () => FREEZE_RULE.speedRatio },
];

export const PRINTED_LIMITS: readonly Suite[] = [
  {
    id: 'pool-rules/printed-limits',
    area: 'pool-rules',
    kind: 'published',
    carried: true,
    document: 'Pool codes as read: Wisconsin, D.C., Pima, Nevada, Wyoming, CDC, CPSC, 10 CFR 431.485',
    at: 'turnover, velocity, filter, flow meter, drains, freeze protection',
    quantity: 'the figure of the rule, in the unit each case names',
    band: { relative: 1e-9 },
    bandBecause: 'A limit is a limit.',
    cases: [
      ...Object.entries(WISCONSIN).map(([use, hours]) => turnover('Wisconsin', use, hours)),
      turnover('D.C.', 'wading', 1),
      turnover('Pima', 'public-pool', 8),
      turnover('Pima', 'indoor-exercise', 6),
      velocity('Nevada', 'return', 10),
      velocity('Nevada', 'copper-return', 6),
      velocity('Nevada', 'suction', 6),
      velocity('Pima', 'return', 10),
      velocity('Pima', 'suction', 6),
      filter('high-rate-sand', 15),
      filter('rapid-sand', 8),
      filter('cartridge', 10),
      ...OTHERS,
    ],
  },
];
