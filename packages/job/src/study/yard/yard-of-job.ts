/** The yard map of a job: every spot on its plan where a heater may stand, by the distances in force at the address. */
import { fail, type Issue, ok, place, type Result } from '@firstfire/engine';
import { editionInForce, type Profile, RULES } from '@firstfire/reference';
import { fieldFact } from '../facts/field-fact.ts';
import { SurveyReader } from '../facts/survey-reader.ts';
import type { JobView } from '../facts/view.ts';
import { ownValuesOf } from '../plant/model.ts';
import { facesAsked } from '../plant/place/faces-asked.ts';
import { type DrawnThing, objectsOf, propertyRing, SOLID, thingsAt } from '../plant/place/plan.ts';
import { type Site, siteOf, wordAt } from '../plant/place/sources.ts';

export interface YardOptions {
  /** Under which the distances are asked. */
  readonly profile: Profile;
  /** Between spots, m. */
  readonly step?: number;
}

const USUAL_STEP = 0.1;
/** Pad under a heater whose own is not known, m. */
const USUAL_BASE = 0.1;
/** Far below the ground, m. */
const UNDERGROUND = -100;
/** Larger than any: of an input that is not known the most is asked, W. */
const UNKNOWN_INPUT = 1e9;

/** Kind on the plan → rule that asks a distance of it. */
const ASKED: Readonly<Record<string, string>> = {
  'property line': 'place.property-line',
  opening: 'air.flue-from-openings',
  'air conditioner': 'place.air-conditioner',
  'regulator vent': 'place.regulator-vent',
  electrical: 'place.electrical-space',
  pool: 'place.water-edge',
  'propane tank': 'place.propane-tank',
};

/** The map for one heater; its box, its plan or its property line missing is an issue that names the reading. */
export function yardOfJob(
  view: JobView,
  heater: string,
  { profile, step = USUAL_STEP }: YardOptions,
): Result<place.YardMap> {
  const question = yardQuestionOf(view, heater, profile);
  return question.ok ? place.yardMap({ ...question.value, step }) : question;
}

/** A thing of the question, with what the plan calls it. */
export interface NamedThing extends place.YardThing {
  readonly id: string;
  readonly kind: string;
}

export interface YardQuestionOfJob extends Omit<place.YardQuestion, 'step'> {
  readonly things: readonly NamedThing[];
  /** Everything that is drawn, as it is drawn. */
  readonly drawn: readonly DrawnThing[];
}

/** What the map is asked, without its step. */
export function yardQuestionOf(view: JobView, heater: string, profile: Profile): Result<YardQuestionOfJob> {
  const site = siteOf(view, heater);
  const reader = new SurveyReader(view);
  const objects = objectsOf(view, reader);
  const box = boxOf(site, reader);
  if (reader.wrong.length > 0) return fail(...reader.wrong);
  const lacking = reader.missing.map(missing);
  const yard = propertyRing(objects);
  if (yard === undefined) lacking.push({ ...missing('planObjects'), expected: ['property line'] });
  if (yard === undefined || lacking.length > 0) return fail(...lacking);
  const things = thingsAt(objects, ownValuesOf(reader.parameters));
  if (!things.ok) return things;
  const asked = things.value.filter(({ kind }) => kind !== 'pump');
  return ok({
    yard,
    things: asked.flatMap((one) => yardThings(site, one, profile)),
    heater: box,
    faces: facesAsked(site),
    turns: [0, 1, 2, 3].map((quarters) => (quarters * Math.PI) / 2),
    drawn: things.value,
  });
}

function missing(where: string): Issue {
  return { code: 'ill-formed', where, reason: 'input-missing' };
}

function boxOf({ heater, spot }: Site, reader: SurveyReader) {
  const size = (field: string): number => reader.number({ collection: 'heaters', id: heater, field });
  const [width, depth, height] = [size('width'), size('depth'), size('height')];
  const base = reader.numberOr({ collection: 'spots', id: spot, field: 'padHeight' }, USUAL_BASE);
  return { width, depth, height, base };
}

/** Nobody stands a heater on a walkway, in the water or in a sprinkler's reach. */
const KEPT_FREE: ReadonlySet<string> = new Set([...SOLID, 'walkway', 'pool', 'sprinkler']);

function yardThings(site: Site, one: DrawnThing, profile: Profile): readonly NamedThing[] {
  const { id, corners, closed, bottom, top, growth, kind } = one;
  const shape = { id, kind, corners, closed, bottom, top, growth };
  const solid = KEPT_FREE.has(kind);
  const made = { ...shape, least: leastOf(site, kind, profile), solid };
  // Under a deck no heater stands, however high the deck is: the ground below it is kept free.
  return kind === 'deck' ? [made, { ...made, bottom: UNDERGROUND, top: 0 }] : [made];
}

function leastOf(site: Site, kind: string, profile: Profile): number {
  const rule = ASKED[kind];
  const fuel = wordAt(site.view, { collection: 'heaters', id: site.heater, field: 'fuel' });
  // A tank beside a heater of natural gas asks nothing of it.
  const asks = rule !== undefined && !(kind === 'propane tank' && fuel === 'natural');
  const inForce = !asks ? 0 : askedBy(site, rule, profile);
  return Math.max(inForce, kind === 'property line' ? numberAt(site, 'setback') : 0);
}

/** What a rule asks of a heater outdoors: the rule itself, asked of one that stands right beside the thing. */
function askedBy({ view, heater }: Site, id: string, profile: Profile): number {
  const rule = RULES.find((one) => one.id === id);
  const edition = rule === undefined ? undefined : editionInForce(rule, profile);
  if (rule === undefined || edition === undefined) return 0;
  const of = (field: string) => fieldFact('heaters', field, view.record('heaters', heater).reading(field));
  const [input, fuel] = [of('input'), of('fuel')];
  const numbers = { found: 0, over: 0, input: input.state === 'number' ? input.value : UNKNOWN_INPUT };
  const words = { terminal: 'outdoors', fuel: fuel.state === 'word' ? fuel.value : 'propane' };
  const outcome = rule.check(numbers, words, edition.values);
  return outcome.sense === 'at-least' ? outcome.required : 0;
}

function numberAt({ view, spot }: Site, field: string): number {
  const fact = fieldFact('spots', field, view.record('spots', spot).reading(field));
  return fact.state === 'number' ? fact.value : 0;
}
