/** Piping in the ground: how deep, and what plastic pipe needs there. */
import { quantity } from '@firstfire/engine';
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { b149, ifgc2018, NO_SECTION } from '../entries.ts';
import { saysYes } from '../plain.ts';

const UNDERGROUND: ReadonlySet<string> = new Set(['underground', 'under a commercial drive']);

interface Depth {
  readonly usual: number;
  /** Under a commercial drive or a parking lot. */
  readonly drive: number;
}

const depths: readonly Edition<Depth>[] = [
  ifgc2018('404.12, 12 in; 8 in for a single line that nothing can damage is for the authority to allow', {
    usual: 12 * quantity.INCH,
    drive: 12 * quantity.INCH,
  }),
  b149('6.15, 15 in (400 mm), 24 in (600 mm) under a commercial drive', { usual: 0.4, drive: 0.6 }),
];

/** Divided by the depth asked. */
export const burialDepth = defineRule({
  id: 'gas.burial-depth',
  line: 'gas',
  scope: 'laid-segment',
  numbers: { found: 'laid-segment.cover' },
  words: { where: 'laid-segment.where' },
  optional: ['found'],
  guard: 0,
  editions: depths,
  check: (n, w, values) => {
    if (!UNDERGROUND.has(w.where)) return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    const limit = w.where === 'underground' ? values.usual : values.drive;
    return { sense: 'at-least', required: limit, found: n.found, kind: 'length', yardstick: limit };
  },
});

/** Outdoors and in the ground only: sunlight and a blow break it, and fire opens it. */
export const plasticUnderground = defineRule({
  id: 'gas.plastic-underground',
  line: 'gas',
  scope: 'plastic-segment',
  numbers: {},
  words: { where: 'plastic-segment.where' },
  editions: [ifgc2018('404.17.1', {}), b149(`polyethylene in the ground only, ${NO_SECTION}`, {})],
  check: (_n, w) => ({ sense: 'holds', holds: UNDERGROUND.has(w.where) }),
});

/** Of metal inside, so that no plastic stands above the ground. */
export const plasticRisers = saysYes({
  id: 'gas.plastic-risers',
  line: 'gas',
  scope: 'plastic-segment',
  fact: 'plastic-segment.risers',
  editions: [
    ifgc2018(`404.17, risers of listed transition fittings, ${NO_SECTION}`, {}),
    b149(`risers of certified transition fittings, ${NO_SECTION}`, {}),
  ],
});

export const tracer = saysYes({
  id: 'gas.tracer',
  line: 'gas',
  scope: 'plastic-segment',
  fact: 'plastic-segment.tracer',
  editions: [ifgc2018('404.17.3', {}), b149(`tracer wire along polyethylene, ${NO_SECTION}`, {})],
});

/** Of a wire that is there. Divided by the size asked. */
export const tracerSize = defineRule({
  id: 'gas.tracer-size',
  line: 'gas',
  scope: 'plastic-segment',
  numbers: { found: 'plastic-segment.tracer-size' },
  words: { fitted: 'plastic-segment.tracer' },
  optional: ['found', 'fitted'],
  guard: 0,
  editions: [ifgc2018('404.17.3, 18 AWG', { limit: quantity.gaugeArea(18) })],
  check: (n, w, { limit }) => {
    if (w.fitted !== 'yes') return { sense: 'does-not-apply' };
    if (Number.isNaN(n.found)) return { sense: 'unread' };
    return { sense: 'at-least', required: limit, found: n.found, kind: 'wire-size', yardstick: limit };
  },
});
