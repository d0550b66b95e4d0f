/**
 * What a room has of the air its burners need, by the method of the US codes: a fan that blows it in; or the room's
 * volume and its openings to outdoors together; or the volume of the rooms it is joined with.
 */
import { air, evaluate, ok, type Recorder, type Result } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { answers } from './answer.ts';
import { orZero, type RoomInput, takeBurners, takeOpenings, takeSize, takeVents, totalOf } from './room.ts';
import { atSpot, type HeaterSpot } from './spot.ts';

/** Most air changes that may be counted, and the rate below which a known one must be used. IFGC 304.5. */
const MOST_CHANGES = 0.6;
const TIGHT = 0.4;

const METHOD: Readonly<Record<string, air.OpeningMethod>> = {
  outdoors: 'two-direct',
  'outdoors by vertical ducts': 'two-direct',
  'outdoors by horizontal ducts': 'two-horizontal',
  'other rooms': 'two-indoor',
};

export function airShareModel(view: JobView, at: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  const fact = `heater/${at.heater}/air-share` as const;
  const find = reader.has(atSpot(at.spot)('mechanicalAir')) ? byFan(reader, at) : byRoom(reader, at);
  const assumed =
    reader.has(atSpot(at.spot)('openingTo')) || reader.has(atSpot(at.spot)('mechanicalAir'))
      ? []
      : [readingPath('spots', at.spot, 'openingTo')];
  return answers({ fact, kind: 'ratio', reader, assumed, find });
}

/** Everything that draws air out of the room beside its burners. */
const FANS = ['exhaustFan', 'dryerAir', 'hoodAir'] as const;

type Share = (values: Values, recorder?: Recorder) => Result<number>;

function byFan(reader: SurveyReader, at: HeaterSpot): Share {
  const burners = takeBurners(reader, at);
  reader.number(atSpot(at.spot)('mechanicalAir'));
  for (const field of FANS) reader.numberOr(atSpot(at.spot)(field), 0);
  const of = (values: Values, field: string): number => orZero(values(readingPath('spots', at.spot, field)));
  return (values, recorder) => {
    const exhaust = FANS.reduce((sum, field) => sum + of(values, field), 0);
    const need = { heatInput: totalOf(burners(values)), exhaust };
    const flow = evaluate(air.mechanicalSupply, need, recorder);
    return flow.ok ? ok(of(values, 'mechanicalAir') / flow.value) : flow;
  };
}

function byRoom(reader: SurveyReader, at: HeaterSpot): Share {
  const burners = takeBurners(reader, at);
  const size = takeSize(reader, at.spot);
  const openings = byOpenings(reader, at);
  const needed = neededVolume(reader, at.spot);
  const to = reader.wordOr(atSpot(at.spot)('openingTo'), 'outdoors');
  const joined = to === 'other rooms' ? reader.number(atSpot(at.spot)('joinedVolume')) : 0;
  return (values, recorder) => {
    const input = burners(values);
    const volume = needed(values, input, recorder);
    if (!volume.ok) return volume;
    const area = openings(values, totalOf(input), recorder);
    if (!area.ok) return area;
    const own = size(values).volume / volume.value;
    recorder?.given({ id: 'air.share-by-volume', value: own, kind: 'ratio' });
    recorder?.given({ id: 'air.share-by-openings', value: area.value, kind: 'ratio' });
    if (to !== 'other rooms')
      return evaluate(air.combinedAir, { byVolume: own, byOpenings: area.value }, recorder);
    // Rooms count as one as far as the openings between them reach.
    return ok(Math.max(own, Math.min(area.value, own + joined / volume.value)));
  };
}

/** Volume asked for, m3: by the infiltration rate where it is known, else by the standard method. */
function neededVolume(reader: SurveyReader, spot: string) {
  const known = reader.has(atSpot(spot)('airChanges'));
  reader.numberOr(atSpot(spot)('airChanges'), 0);
  return (values: Values, input: RoomInput, recorder?: Recorder): Result<number> => {
    const standard = evaluate(air.standardRoomVolume, { heatInput: totalOf(input) }, recorder);
    if (!known) return standard;
    const read = values(readingPath('spots', spot, 'airChanges'));
    const leaky = leakyVolume(input, Math.min(read, MOST_CHANGES), recorder);
    if (read < TIGHT || !leaky.ok || !standard.ok) return leaky;
    return ok(Math.min(leaky.value, standard.value));
  };
}

function leakyVolume(input: RoomInput, airChanges: number, recorder?: Recorder): Result<number> {
  const of = (heatInput: number, coefficient: number): Result<number> =>
    evaluate(air.infiltrationRoomVolume, { heatInput, airChanges, coefficient }, recorder);
  const natural = of(input.natural, air.INFILTRATION_COEFFICIENT.natural);
  const withFan = of(input.fanAssisted, air.INFILTRATION_COEFFICIENT.fanAssisted);
  if (!natural.ok) return natural;
  return withFan.ok ? ok(natural.value + withFan.value) : withFan;
}

/** The smaller of two openings over what is asked of each; one alone counts by the method of one opening. */
function byOpenings(reader: SurveyReader, at: HeaterSpot) {
  const { spot } = at;
  const openings = takeOpenings(reader, spot);
  const to = reader.wordOr(atSpot(spot)('openingTo'), 'outdoors');
  const two = METHOD[to] ?? 'two-direct';
  // Whether there is a low opening at all is the shape of the room, not a figure with a ±.
  const one = two !== 'two-indoor' && reader.number(atSpot(spot)('openingLow')) === 0;
  const vents = one ? takeVents(reader, at) : () => 0;
  return (values: Values, heatInput: number, recorder?: Recorder): Result<number> => {
    const { low, high } = openings(values);
    const method = one ? 'one' : two;
    const leastArea = two === 'two-indoor' ? air.LEAST_INDOOR_OPENING : vents(values);
    const need = { heatInput, rate: air.OPENING_RATES[method], leastArea };
    const area = evaluate(air.openingArea, need, recorder);
    return area.ok ? ok((one ? high : Math.min(low, high)) / area.value) : area;
  };
}
