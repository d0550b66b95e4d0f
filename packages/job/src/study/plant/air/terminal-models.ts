/** Where the flue gas comes out, and how far that is from what it must not reach. */
import { ok, quantity, type Recorder, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { askedFirst, notApplicable, passedOn } from '../passed-on.ts';
import { answers } from './answer.ts';
import { orZero } from './room.ts';
import { atSpot, type HeaterSpot } from './spot.ts';

const { FOOT, INCH } = quantity;

/** Nearer to a higher wall than this, or wider than that, the roof's pitch alone does not say it. IFGC 503.6.4. */
const NEAR_WALL = 8 * FOOT;
const WIDE_VENT = 12 * INCH;
const LEAST_BESIDE_WALL = 2 * FOOT;

export function terminalModels(view: JobView, at: HeaterSpot): readonly Model[] {
  const key = (name: string): FactKey => `heater/${at.heater}/${name}`;
  const word = view.record('spots', at.spot).reading('terminal')?.value;
  const roof = !at.outdoors && word === 'above the roof';
  const wall = !at.outdoors && !roof;
  // A heater outdoors is its own terminal; where nobody told the end of a vent, that is asked for and nothing else.
  const unsaid = wall && word === undefined;
  const noDeck = view.record('spots', at.spot).reading('terminalDeck')?.value === 'none';
  const pass = (name: string, field: string, applies: boolean): Model => {
    if (!applies) return notApplicable(key(name));
    const where = { collection: 'spots', id: at.spot, field: unsaid ? 'terminal' : field };
    return unsaid ? askedFirst(key(name), where) : passedOn(view, key(name), where);
  };
  return [
    at.outdoors ? outdoorTerminal(key('terminal')) : pass('terminal', 'terminal', true),
    pass('opening-distance', 'openingDistance', !roof),
    levelOr(view, at, { name: 'terminal-over-opening', field: 'terminalOverOpening', applies: !roof }),
    pass('terminal-height', 'terminalHeight', wall),
    pass('public-walkway', 'publicWalkway', wall),
    pass('terminal-soffit', 'terminalSoffit', wall),
    pass('terminal-deck', 'terminalDeck', wall),
    pass('terminal-deck-gap', 'terminalDeckGap', wall && !noDeck),
    pass('adjacent-opening', 'adjacentOpening', wall),
    pass('air-inlet-distance', 'airInletDistance', true),
    levelOr(view, at, { name: 'terminal-over-inlet', field: 'terminalOverInlet', applies: true }),
    pass('cap-over-roof', 'capOverRoof', roof),
    roof ? leastCap(view, at) : notApplicable(key('cap-least')),
  ];
}

function outdoorTerminal(fact: FactKey): Model {
  return {
    ...notApplicable(fact),
    run: () => ({ ok: true, outputs: [{ fact, word: 'outdoors' }] }),
  };
}

interface Level {
  readonly name: string;
  readonly field: string;
  readonly applies: boolean;
}

/** A height that, unless someone measured it, counts as none: the distance alone then has to do. */
function levelOr(view: JobView, { heater, spot }: HeaterSpot, { name, field, applies }: Level): Model {
  const fact: FactKey = `heater/${heater}/${name}`;
  if (!applies) return notApplicable(fact);
  const reader = new SurveyReader(view);
  reader.numberOr(atSpot(spot)(field), 0);
  const path = readingPath('spots', spot, field);
  const find = (values: Values, recorder?: Recorder): Result<number> => {
    const value = orZero(values(path));
    recorder?.given({ id: 'reading', value, kind: 'length', reading: path });
    return ok(value);
  };
  return answers({ fact, kind: 'length', reader, find });
}

/** How far over the roof the cap must stand, m. Steeper roofs than the code's figure holds ask for its last row. */
function leastCap(view: JobView, { heater, spot }: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  const at = atSpot(spot);
  const wide = reader.number(at('ventDiameter')) > WIDE_VENT;
  const near = reader.number(at('capWall')) < NEAR_WALL;
  const pitch = reader.number(at('roofPitch'));
  const byPitch = catalog.air.leastCapHeight(pitch) ?? STEEPEST;
  const least = wide || near ? Math.max(byPitch, LEAST_BESIDE_WALL) : byPitch;
  const find = (_values: Values, recorder?: Recorder): Result<number> => {
    recorder?.given({
      id: 'air.least-cap',
      value: least,
      kind: 'length',
      source: catalog.air.ROOF_PITCH_SOURCE,
    });
    return ok(least);
  };
  return answers({ fact: `heater/${heater}/cap-least`, kind: 'length', reader, find });
}

const STEEPEST = 8 * FOOT;
