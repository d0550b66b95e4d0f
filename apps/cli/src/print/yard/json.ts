/** Where each heater may stand, for other programs: SI values, radians; a format with a version of its own. */
import type { HeaterYard, JudgedSpot, MappedYard } from '@firstfire/job';

/** Digits of a margin that a program can use. */
const THOUSAND = 1000;

export function yardsAsJson(yards: readonly HeaterYard[]): string {
  const heaters = yards.map((one) => (one.state === 'known' ? { ...one, yard: yardOf(one.yard) } : one));
  return JSON.stringify({ format: 'firstfire-place', version: 1, heaters }, undefined, 1);
}

function yardOf(yard: MappedYard) {
  const { question, map, allowed, best, drawn } = yard;
  const things = question.things.map(({ id, kind, least, solid }) => ({ id, kind, least, solid }));
  const spots = best.map((spot) => spotOf(spot));
  const { x, y, step, columns, rows, tried } = map;
  const rounded = Array.from(map.margins, (margin) =>
    Number.isNaN(margin) ? null : Math.floor(margin * THOUSAND) / THOUSAND,
  );
  return {
    heater: question.heater,
    faces: question.faces,
    turns: question.turns,
    things,
    tried,
    allowed,
    spots,
    ...(drawn === undefined ? {} : { drawn: spotOf(drawn) }),
    // By row from the bottom of the plan, then by column; null where no heater can stand.
    grid: { x, y, step, columns, rows, margins: rounded, turns: Array.from(map.turns) },
  };
}

/** Limits name their thing by its number in `things`. */
function spotOf({ at, turn, inYard, standsIn, limits, connections }: JudgedSpot) {
  const margin = limits[0]?.margin;
  return { at, turn, inYard, standsIn, ...(margin === undefined ? {} : { margin }), limits, connections };
}
