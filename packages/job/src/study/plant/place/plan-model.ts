/** Distances taken from the plan, for what nobody measured. A measured reading always comes before the plan. */
import { fail, type Issue, ok, place, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import { type Model, type Output, ownValues, type Values } from '../model.ts';
import { facesAsked } from './faces-asked.ts';
import {
  type DrawnThing,
  heaterAt,
  type Plan,
  parametersOf,
  propertyRing,
  SOLID,
  thingsAt,
  waterSideOf,
} from './plan.ts';
import { faceId, isKnown, isOutdoors, type Source } from './sources.ts';
import { type FacingWay, isReversible, wayToFace } from './way-to-face.ts';

/** How the ids of these models begin. */
export const PLAN = 'place.plan.';
/** Farther than a plan looks, m: nothing is drawn before that face. */
const FAR = 30;
/** Width of the room a technician works in, 30 in. */
const SERVICE_WIDTH = 0.762;

/** Fact → kind of the things it is the distance to. */
const DISTANCES: Readonly<Record<string, string>> = {
  'opening-distance': 'opening',
  'property-line-distance': 'property line',
  'water-edge-distance': 'pool',
  'air-conditioner-distance': 'air conditioner',
  'regulator-vent-distance': 'regulator vent',
  'electrical-distance': 'electrical',
  'tank-distance': 'propane tank',
};

/** Facts the plan gives, and their place in a heater and its things. */
type Taken = (heater: place.Placed, things: readonly DrawnThing[]) => Output;

/**
 * A model of the facts that the plan gives and no reading does; it takes them out of the sources.
 * Undefined where the plan gives none.
 */
export function planModel(plan: Plan, sources: Map<FactKey, Source>): Model | undefined {
  const taken = takenFrom(plan, sources);
  if (taken.size === 0) return undefined;
  for (const fact of taken.keys()) sources.delete(fact);
  const { reader, site } = plan;
  const outputs = (values: Values): Result<readonly Output[]> => {
    const found = situation(plan, values);
    if (!found.ok) return found;
    const { heater, things } = found.value;
    return ok([...taken.values()].map((take) => take(heater, things)));
  };
  const model: Model = {
    id: `${PLAN}${site.heater}`,
    provides: [...taken.keys()],
    parameters: parametersOf(plan),
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const found = outputs(values);
      return found.ok ? { ok: true, outputs: found.value } : found;
    },
    explain: (fact) => explained(model, fact),
  };
  return model;
}

export interface Situation {
  readonly heater: place.Placed;
  readonly things: readonly DrawnThing[];
}

/** Heater and things as the values put them; a heater across the property line or beyond it is an issue. */
export function situation(plan: Plan, values: Values): Result<Situation> {
  const heater = heaterAt(plan, values);
  const things = thingsAt(plan.objects, values);
  if (!heater.ok || !things.ok) return fail(...[heater, things].flatMap((one) => (one.ok ? [] : one.issues)));
  const ring = propertyRing(plan.objects);
  if (ring !== undefined && !place.standsWithin(ring, heater.value)) return fail(outside(plan));
  return ok({ heater: heater.value, things: things.value });
}

function outside({ site }: Plan): Issue {
  const where = readingPath('spots', site.spot, 'planX');
  return { code: 'contradiction', where, reason: 'heater-outside-the-plan' };
}

/** Distance to the nearest of a kind, m; undefined where the plan shows none. */
export function nearest(kind: string, { heater, things }: Situation): number | undefined {
  const distances = things.filter((one) => one.kind === kind).map((one) => place.thingDistance(heater, one));
  return distances.length === 0 ? undefined : Math.min(...distances);
}

function takenFrom(plan: Plan, sources: ReadonlyMap<FactKey, Source>): Map<FactKey, Taken> {
  const { view, heater, spot } = plan.site;
  const taken = new Map<FactKey, Taken>();
  const take = (fact: FactKey, make: (fact: FactKey) => Taken): void => {
    const source = sources.get(fact);
    if (source === 'not-applicable') return;
    if (source !== undefined && 'at' in source && isKnown(view, source.at)) return;
    taken.set(fact, make(fact));
  };
  const drawn = new Set(plan.objects.map(({ kind }) => kind));
  for (const face of place.FACES) take(`face/${faceId(heater, face)}/clearance`, clearanceOf(face));
  for (const [name, kind] of Object.entries(DISTANCES))
    if (drawn.has(kind) && askedHere(plan, name)) take(`heater/${heater}/${name}`, distanceTo(kind));
  take(`heater/${heater}/service-room`, serviceRoom);
  if (isOutdoors(plan.site)) {
    take(`heater/${heater}/under-structure`, under('deck'));
    if (drawn.has('sprinkler')) take(`heater/${heater}/sprinkler`, under('sprinkler'));
  }
  if (drawn.has('walkway')) take(`heater/${heater}/on-walkway`, under('walkway'));
  if (drawn.has('pump')) {
    const waterSide = readingPath('heaters', heater, 'waterSide');
    take(`heater/${heater}/connections-angle`, angleToPump(plan, waterSide));
    take(`heater/${heater}/connections-way`, wayToPump(plan, waterSide));
  }
  // The flue's distance to a window is asked by the air line, which reads it at the same spot.
  if (isKnown(view, { collection: 'spots', id: spot, field: 'openingDistance' }))
    taken.delete(`heater/${heater}/opening-distance`);
  return taken;
}

function askedHere({ site }: Plan, name: string): boolean {
  return name !== 'opening-distance' || isOutdoors(site);
}

const clearanceOf =
  (face: place.Face) =>
  (fact: FactKey): Taken =>
  (heater, things) => {
    const solid = things.filter((one) => SOLID.has(one.kind));
    return { fact, value: Math.min(FAR, place.clearances(heater, solid)[face]), kind: 'length' };
  };

const distanceTo =
  (kind: string) =>
  (fact: FactKey): Taken =>
  (heater, things) => ({ fact, value: nearest(kind, { heater, things }) ?? FAR, kind: 'length' });

const serviceRoom =
  (fact: FactKey): Taken =>
  (heater, things) => {
    const solid = things.filter((one) => SOLID.has(one.kind));
    return { fact, value: Math.min(FAR, place.roomBefore(heater, solid, SERVICE_WIDTH)), kind: 'length' };
  };

const under =
  (kind: string) =>
  (fact: FactKey): Taken =>
  (heater, things) => {
    const over = things.some((one) => one.kind === kind && place.planDistance(heater, one) === 0);
    return { fact, word: over ? 'yes' : 'no' };
  };

const angleToPump =
  ({ site }: Plan, waterSide: ReadingPath) =>
  (fact: FactKey): Taken =>
  (heater, things) => {
    const side = waterSideOf(site);
    const pump = things.find((one) => one.kind === 'pump')?.corners[0];
    if (pump === undefined) return { fact, notApplicable: true };
    if (side !== 'left' && side !== 'right') return { fact, unknown: [waterSide] };
    return { fact, value: place.facing(heater, side, pump), kind: 'angle' };
  };

/** What it takes that they face it: asked once, for a word has no ±. */
const wayToPump =
  ({ site }: Plan, waterSide: ReadingPath) =>
  (fact: FactKey): Taken => {
    let way: FacingWay | undefined;
    return (heater, things) => {
      const side = waterSideOf(site);
      const pump = things.find((one) => one.kind === 'pump')?.corners[0];
      if (pump === undefined) return { fact, notApplicable: true };
      if (side !== 'left' && side !== 'right') return { fact, unknown: [waterSide] };
      way ??= wayToFace({
        heater,
        things: things.filter((one) => SOLID.has(one.kind)),
        faces: facesAsked(site),
        side,
        reversible: isReversible(site),
        pump,
      }).way;
      return { fact, word: way };
    };
  };

function explained(model: Model, fact: FactKey): Recorder['steps'] {
  const recorder = new Recorder();
  const run = model.run(ownValues(model));
  const output = run.ok ? run.outputs.find((one) => one.fact === fact) : undefined;
  recorder.open();
  for (const { reading, value, kind } of model.parameters)
    if (!reading.startsWith('planObjects/')) recorder.given({ id: 'reading', value, kind, reading });
  const result = output !== undefined && 'value' in output ? { value: output.value, kind: output.kind } : {};
  recorder.closeGroup({ id: 'place.drawn', ...result });
  return recorder.steps;
}
