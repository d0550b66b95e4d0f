/** Enough air to burn. Each found figure is a share of what is asked for, so that it is its own yardstick. */
import { defineRule, type Outcome } from '../../evaluate/index.ts';
import { byPractice } from '../known.ts';
import { b149, ifgc } from './codes.ts';

function atLeastAll(found: number): Outcome {
  return { sense: 'at-least', required: 1, found, kind: 'ratio', yardstick: 1 };
}

export const combustionAir = defineRule({
  id: 'air.combustion-air',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.air-share' },
  words: {},
  editions: [ifgc('304.5 to 304.9, read as NFPA 54-2012 9.3', {})],
  check: (n) => atLeastAll(n.found),
});

export const supplyOpening = defineRule({
  id: 'air.supply-opening',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.supply-opening-share' },
  words: {},
  editions: [b149('8.2 and 8.4, as quoted in a gas technician’s training text', {})],
  check: (n) => atLeastAll(n.found),
});

export const highOpening = defineRule({
  id: 'air.high-opening',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.high-opening-share' },
  words: {},
  editions: [b149('8.4.1, as quoted in a gas technician’s training text', {})],
  check: (n) => atLeastAll(n.found),
});

/**
 * Divided by the limit. Past it a natural draught can turn round and the room fills with flue gas; a sealed vent with
 * a fan bears more.
 */
export const roomPull = defineRule({
  id: 'air.room-pull',
  line: 'air',
  scope: 'heater',
  numbers: { found: 'heater.room-pull' },
  words: { venting: 'heater.venting' },
  editions: byPractice({ draught: 5, sealed: 25 }),
  check: (n, w, values) => {
    const required = w.venting === 'condensing' ? values.sealed : values.draught;
    return {
      sense: 'at-most',
      required,
      found: n.found,
      kind: 'pressure-difference',
      yardstick: required,
    };
  },
});

/** A fan that fails must not leave the burners without air. */
export const supplyInterlock = defineRule({
  id: 'air.supply-interlock',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { interlock: 'heater.supply-interlock' },
  editions: [ifgc('304.9, read as NFPA 54-2012 9.3.6', {})],
  check: (_n, w) => ({ sense: 'holds', holds: w.interlock === 'yes' }),
});

export const noChemicals = defineRule({
  id: 'air.no-chemicals',
  line: 'air',
  scope: 'heater',
  numbers: {},
  words: { stored: 'heater.chemicals-stored' },
  editions: byPractice({}),
  check: (_n, w) => ({ sense: 'holds', holds: w.stored === 'no' }),
});
