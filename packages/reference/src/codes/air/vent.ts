/** The vent: of the right kind, wide enough to carry the flue gas, narrow enough to stay dry, and high enough. */
import { type Because, defineRule } from '../../evaluate/index.ts';
import { byNameplate } from '../known.ts';
import { b149Recalled, FOOT, ifgc, ifgcRecalled } from './codes.ts';

const TABLES = '504.2 and 504.3, tables 504.2(1), 504.2(2), 504.2(5) and 504.3(1); some cells from memory';
const CANADIAN_TABLES =
  'annex C, held equal to the tables of the US code by a gas technician’s training text';

/** Of one appliance's vent or connector. Divided by the input: the sea-level one, as the code says. */
export const ventCarries = defineRule({
  id: 'air.vent-carries',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.vent-most', required: 'heater.input' },
  words: { reach: 'heater.vent-reach' },
  editions: [ifgcRecalled(TABLES, {}), b149Recalled(CANADIAN_TABLES, {})],
  check: (n, w) => ({ ...atLeast(n.found, n.required), ...reachOf(w.reach) }),
});

function atLeast(found: number, required: number) {
  return { sense: 'at-least', required, found, kind: 'heat-rate', yardstick: required } as const;
}

/** Beyond its table the figure is an estimate: the code asks for an engineered vent there. */
function reachOf(reach: string): { readonly because?: Because } {
  if (reach === 'beyond') return { because: { reason: 'beyond-vent-tables' } };
  return reach === 'not allowed' ? { because: { reason: 'vent-not-allowed' } } : {};
}

/** Divided by the least input: the derated one, as the code says. */
export const ventStaysDry = defineRule({
  id: 'air.vent-stays-dry',
  line: 'air',
  scope: 'heater',
  numbers: { required: 'heater.vent-least', found: 'heater.input-at-site' },
  words: {},
  editions: [ifgcRecalled(TABLES, {}), b149Recalled(CANADIAN_TABLES, {})],
  check: (n) =>
    // A straight vent has no least input.
    n.required === 0 ? { sense: 'does-not-apply' } : atLeast(n.found, n.required),
});

/** Of a vent that several heaters share. Divided by their input. */
export const commonVentCarries = defineRule({
  id: 'air.common-vent-carries',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.common-most', required: 'heater.common-input' },
  words: {},
  editions: [ifgcRecalled(TABLES, {}), b149Recalled(CANADIAN_TABLES, {})],
  check: (n) => atLeast(n.found, n.required),
});

/** Divided by the height the code gives. */
export const ventHigh = defineRule({
  id: 'air.vent-high',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.vent-height' },
  words: {},
  editions: [ifgc('503.6.5, read as NFPA 54-2012 12.7.2(2)', { metres: 5 * FOOT })],
  check: (n, _w, { metres }) => ({
    sense: 'at-least',
    required: metres,
    found: n.found,
    kind: 'length',
    yardstick: metres,
  }),
});

const HOODS_ALONE: ReadonlySet<string> = new Set(['single wall', 'masonry chimney']);

/** A draught leads its gas through a vent that may leak; gas that condenses or is under pressure must not have one. */
export const ventSuits = defineRule({
  id: 'air.vent-suits',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { venting: 'heater.venting', kind: 'heater.vent-kind' },
  editions: byNameplate({}),
  check: (_n, w) => {
    if (w.venting === 'condensing') return { sense: 'holds', holds: w.kind === 'sealed' };
    // Single-wall pipe and masonry are sized for draught hoods alone.
    return { sense: 'holds', holds: w.venting === 'atmospheric' || !HOODS_ALONE.has(w.kind) };
  },
});
