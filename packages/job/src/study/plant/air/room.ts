/** The room a heater burns in, as read: its burners, its size, its openings. */
import { air } from '@firstfire/engine';
import { plannedHeaters } from '../../facts/heaters.ts';
import { recordFacts } from '../../facts/record-facts.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import { atHeater, atSpot, type HeaterSpot, heaterSpot } from './spot.ts';

const ROOM = ['roomLength', 'roomWidth', 'roomHeight'] as const;

/** The part of a room's input that breathes one way, W. */
export interface RoomInput {
  readonly natural: number;
  readonly fanAssisted: number;
}

/**
 * Takes the burners of the room. Heaters whose spots are of one kind and one size stand in one room; one with a direct
 * vent takes nothing from it. What else burns there counts as natural draught, which asks for more.
 */
export function takeBurners(reader: SurveyReader, { spot }: HeaterSpot): (values: Values) => RoomInput {
  const heaters = roommates(reader.view, spot);
  for (const id of heaters) reader.number(atHeater(id, 'input'));
  reader.numberOr(atSpot(spot)('otherInput'), 0);
  const other = readingPath('spots', spot, 'otherInput');
  const withFan = new Set(
    heaters.filter((id) => reader.wordOr(atHeater(id, 'venting'), 'atmospheric') !== 'atmospheric'),
  );
  return (values) => {
    let natural = orZero(values(other));
    let fanAssisted = 0;
    for (const id of heaters) {
      const input = values(readingPath('heaters', id, 'input'));
      if (withFan.has(id)) fanAssisted += input;
      else natural += input;
    }
    return { natural, fanAssisted };
  };
}

export const totalOf = ({ natural, fanAssisted }: RoomInput): number => natural + fanAssisted;

/** A reading that nobody took counts as none. */
export const orZero = (value: number): number => (Number.isNaN(value) ? 0 : value);

/** How far two tapes in one room may differ, as a share. */
const TAPES = 0.02;

function roommates(view: JobView, spot: string): readonly string[] {
  return plannedHeaters(view).filter((heater) => {
    const one = heaterSpot(view, heater);
    return !one.directVent && (one.spot === spot || sameRoom(view, one.spot, spot));
  });
}

/** Of one kind and one size, whichever units they were read in; not known at both is the same too. */
function sameRoom(view: JobView, one: string, other: string): boolean {
  return ['where', ...ROOM].every((field) => {
    const [a, b] = [one, other].map((id) => recordFacts('spots', view.record('spots', id)).at(field).fact);
    if (a?.state === 'number' && b?.state === 'number')
      return Math.abs(a.value - b.value) <= TAPES * Math.max(a.value, b.value);
    return a?.state === 'word' && b?.state === 'word' ? a.value === b.value : a?.state === b?.state;
  });
}

/** Area of all vents of the room together, m2: one opening alone is no smaller. A vent nobody measured counts as none. */
export function takeVents(reader: SurveyReader, { spot }: HeaterSpot): (values: Values) => number {
  const spots = roommates(reader.view, spot).map((id) => heaterSpot(reader.view, id).spot);
  for (const one of spots) reader.numberOr(atSpot(one)('ventDiameter'), 0);
  return (values) =>
    spots.reduce((sum, one) => {
      const diameter = orZero(values(readingPath('spots', one, 'ventDiameter')));
      return sum + (Math.PI / 4) * diameter ** 2;
    }, 0);
}

export interface RoomSize {
  /** m3. */
  readonly volume: number;
  /** Walls and ceiling, m2. */
  readonly shell: number;
}

export function takeSize(reader: SurveyReader, spot: string): (values: Values) => RoomSize {
  for (const field of ROOM) reader.number(atSpot(spot)(field));
  return (values) => {
    const [length = 0, width = 0, height = 0] = ROOM.map((field) =>
      values(readingPath('spots', spot, field)),
    );
    return { volume: length * width * height, shell: length * width + 2 * (length + width) * height };
  };
}

/** Free areas, m2. */
export interface RoomOpenings {
  readonly low: number;
  readonly high: number;
}

export function takeOpenings(reader: SurveyReader, spot: string): (values: Values) => RoomOpenings {
  const at = atSpot(spot);
  reader.number(at('openingLow'));
  reader.number(at('openingHigh'));
  const louvre = reader.wordOr(at('openingLouvre'), 'none');
  const share = louvre in air.FREE_SHARE ? air.FREE_SHARE[louvre as air.Louvre] : 1;
  const free = (values: Values, field: string): number =>
    air.freeArea.kernel({ grossArea: values(readingPath('spots', spot, field)), share });
  return (values) => ({ low: free(values, 'openingLow'), high: free(values, 'openingHigh') });
}
