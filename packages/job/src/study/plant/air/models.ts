/** The models of the air line: the room or shed each heater burns in. */
import { air, evaluate, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { notApplicable, passedOn } from '../passed-on.ts';
import { spotOf } from '../spot-of.ts';

export function airModels(view: JobView): readonly Model[] {
  return plannedHeaters(view).flatMap((heater) => {
    const spot = spotOf(view, heater);
    const where = view.record('spots', spot).reading('where')?.value;
    const pass = (name: string, field: string, applies: boolean): Model => {
      const fact: FactKey = `heater/${heater}/${name}`;
      return applies ? passedOn(view, fact, { collection: 'spots', id: spot, field }) : notApplicable(fact);
    };
    return [
      airShareModel(view, heater, spot),
      // Where nobody knows yet where it stands, both are asked for.
      pass('opening-distance', 'openingDistance', where === undefined || where === 'outdoors'),
      pass('chemicals-stored', 'chemicalsStored', where !== 'outdoors'),
    ];
  });
}

const ROOM = ['roomLength', 'roomWidth', 'roomHeight'] as const;
const OPENINGS = ['openingLow', 'openingHigh'] as const;

/**
 * What the room has of the air it needs: the better of its volume by the standard method and its two openings to
 * outdoors. All heaters that say they stand in a room of this size burn in the same one.
 */
function airShareModel(view: JobView, heater: string, spot: string): Model {
  const reader = new SurveyReader(view);
  const at = (field: string): Where => ({ collection: 'spots', id: spot, field });
  const outdoors = reader.word(at('where')) === 'outdoors';
  const together = outdoors ? [] : roommates(view, spot);
  if (!outdoors) {
    for (const field of [...ROOM, ...OPENINGS]) reader.number(at(field));
    for (const id of together) reader.number({ collection: 'heaters', id, field: 'input' });
  }
  const fact: FactKey = `heater/${heater}/air-share`;
  const share = (values: Values, recorder?: Recorder): Result<number> => {
    const of = (field: string): number => values(readingPath('spots', spot, field));
    const heatInput = together.reduce((sum, id) => sum + values(readingPath('heaters', id, 'input')), 0);
    const volume = evaluate(air.standardRoomVolume, { heatInput }, recorder);
    if (!volume.ok) return volume;
    const rate = air.OPENING_RATES['two-direct'];
    const area = evaluate(air.openingArea, { heatInput, rate, leastArea: 0 }, recorder);
    if (!area.ok) return area;
    const byVolume = ROOM.reduce((product, field) => product * of(field), 1) / volume.value;
    const byOpenings = Math.min(...OPENINGS.map(of)) / area.value;
    recorder?.given({ id: 'air.share-by-volume', value: byVolume, kind: 'ratio' });
    recorder?.given({ id: 'air.share-by-openings', value: byOpenings, kind: 'ratio' });
    return { ok: true, value: Math.max(byVolume, byOpenings) };
  };
  return {
    id: `air.share.${heater}`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      if (outdoors) return { ok: true, outputs: [{ fact, notApplicable: true }] };
      const found = share(values);
      if (!found.ok) return found;
      return { ok: true, outputs: [{ fact, value: found.value, kind: 'ratio' }] };
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      if (!outdoors) share(values, recorder);
      return recorder.steps;
    },
  };
}

/** Heaters whose spots are the same room: of one kind and one size. */
function roommates(view: JobView, spot: string): readonly string[] {
  const size = (id: string): string =>
    JSON.stringify(['where', ...ROOM].map((field) => view.record('spots', id).reading(field)?.value));
  const own = size(spot);
  return plannedHeaters(view).filter((heater) => size(spotOf(view, heater)) === own);
}
