/** What holds everything around the water at one potential. */
import { quantity } from '@firstfire/engine';
import { type AnyRule, defineRule, type Edition, reaches } from '../../evaluate/index.ts';
import { c22, nec2011 } from './sources.ts';

const QUOTED = 'read in a public copy';
const BOND = 'rule 68-058(3), as quoted in a trade article';

export const bonded = defineRule({
  id: 'power.bonded',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { bonded: 'heater.bonded' },
  editions: [nec2011('680.26(B)(6)', {}), c22(BOND, {}, QUOTED)],
  check: (_n, w) => ({ sense: 'holds', holds: w.bonded === 'yes' }),
});

/** Bare, covered or insulated: all are allowed. Divided by the least; just that size is what is usually run. */
export const bondSize = defineRule({
  id: 'power.bond-size',
  line: 'power',
  scope: 'heater',
  numbers: { found: 'heater.bond-conductor' },
  words: {},
  guard: 0,
  editions: [
    nec2011('680.26(B), copper not smaller than 8 AWG, insulated, covered or bare', {
      least: quantity.gaugeArea(8),
    }),
    c22(BOND, { least: quantity.gaugeArea(6) }, QUOTED),
  ],
  check: (n, _w, { least }) => ({
    sense: 'at-least',
    required: least,
    found: n.found,
    kind: 'wire-size',
    yardstick: least,
  }),
});

export const bondSolid = defineRule({
  id: 'power.bond-solid',
  line: 'power',
  scope: 'heater',
  numbers: {},
  words: { strands: 'heater.bond-strands' },
  editions: [nec2011('680.26(B), solid copper', {})],
  check: (_n, w) => ({ sense: 'holds', holds: w.strands === 'solid' }),
});

/** Divided by the limit. A new heater with plastic headers may take away the metal that touched the water. */
export const waterBond = defineRule({
  id: 'power.water-bond',
  line: 'power',
  scope: 'job',
  numbers: { found: 'job.water-contact' },
  words: { header: 'job.metal-header' },
  editions: [
    nec2011('680.26(C), 9 in² of metal in contact with the water', { least: 9 * quantity.INCH ** 2 }),
  ],
  check: (n, w, { least }) => ({
    sense: 'at-least',
    required: least,
    found: n.found,
    kind: 'area',
    yardstick: least,
    ...(w.header === 'leaves' ? { because: { reason: 'metal-header-leaves' } } : {}),
  }),
});

export const perimeterBonded = defineRule({
  id: 'power.perimeter-bonded',
  line: 'power',
  scope: 'job',
  numbers: {},
  words: { perimeter: 'job.perimeter' },
  editions: [nec2011('680.26(B)(2)', {})],
  check: (_n, w) =>
    w.perimeter === 'existing'
      ? { sense: 'does-not-apply' }
      : { sense: 'holds', holds: w.perimeter !== 'none' },
});

/** A count, which has a verdict and no margin. */
export const perimeterPoints = defineRule({
  id: 'power.perimeter-points',
  line: 'power',
  scope: 'job',
  numbers: { found: 'job.perimeter-points' },
  words: {},
  editions: [
    nec2011('680.26(B)(2), four points of connection', { least: 4 }),
    c22('rule 68-058(2), four points, as quoted in a trade article', { least: 4 }, QUOTED),
  ],
  check: (n, _w, { least }) => ({ sense: 'holds', holds: reaches(n.found, least) }),
});

/** Divided by the limit; built to the limit. */
export const perimeterWidth = defineRule({
  id: 'power.perimeter-width',
  line: 'power',
  scope: 'job',
  numbers: { found: 'job.perimeter-width' },
  words: {},
  guard: 0,
  editions: [nec2011('680.26(B)(2), 3 ft out from the inside wall', { least: 3 * quantity.FOOT })],
  check: (n, _w, { least }) => ({
    sense: 'at-least',
    required: least,
    found: n.found,
    kind: 'length',
    yardstick: least,
  }),
});

interface Band {
  readonly low: number;
  readonly high: number;
}

interface Built {
  readonly id: `power.${string}`;
  readonly fact: `job.${string}`;
  readonly editions: readonly Edition<Band>[];
}

/** A length that must lie in a band, which is divided by half its width. */
function lengthWithin({ id, fact, editions }: Built): AnyRule {
  return defineRule({
    id,
    line: 'power',
    scope: 'job',
    numbers: { found: fact },
    words: {},
    editions,
    check: (n, _w, { low, high }) => ({ sense: 'within', low, high, found: n.found, kind: 'length' }),
  });
}

const inches = (low: number, high: number): Band => ({
  low: low * quantity.INCH,
  high: high * quantity.INCH,
});

export const ringDistance = lengthWithin({
  id: 'power.ring-distance',
  fact: 'job.ring-distance',
  editions: [nec2011('680.26(B)(2)(b), 18 to 24 in from the inside wall', inches(18, 24))],
});

export const ringDepth = lengthWithin({
  id: 'power.ring-depth',
  fact: 'job.ring-depth',
  editions: [nec2011('680.26(B)(2)(b), 4 to 6 in below the subgrade', inches(4, 6))],
});

export const gridPitch = lengthWithin({
  id: 'power.grid-pitch',
  fact: 'job.grid-pitch',
  editions: [nec2011('680.26(B)(1)(b), 12 in with a tolerance of 4 in', inches(8, 16))],
});
