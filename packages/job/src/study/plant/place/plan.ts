/**
 * The plan of the yard as the survey drew it: its things, and the heater among them.
 *
 * A thing stands on the ground and is higher than the heater unless its heights were read: what is not known never
 * gives the heater more room than it has.
 */
import { fail, type Issue, ok, place, type Result } from '@firstfire/engine';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Parameter, Values } from '../model.ts';
import { isKnown, type Site, wordAt } from './sources.ts';

/** One thing on the plan, without its heights. */
interface DrawnObject {
  readonly id: string;
  readonly kind: string;
  readonly drawn: place.Drawn;
}

export interface DrawnThing extends place.Thing {
  readonly id: string;
  readonly kind: string;
}

const RINGS: ReadonlySet<string> = new Set(['building', 'overhang', 'deck', 'pool', 'walkway']);
const RINGS_WHERE_DRAWN_SO: ReadonlySet<string> = new Set([
  'property line',
  'shrub',
  'air conditioner',
  'propane tank',
]);
/** Hang over the ground at a height that has to be read. */
const HANGING: ReadonlySet<string> = new Set(['overhang', 'deck']);
/** Lie in or on the ground. */
const FLAT: ReadonlySet<string> = new Set(['pool', 'walkway', 'property line', 'sprinkler']);
/** Take room from the heater's faces. */
export const SOLID: ReadonlySet<string> = new Set([
  'building',
  'wall',
  'fence',
  'shrub',
  'overhang',
  'deck',
  'air conditioner',
  'electrical',
  'propane tank',
]);

/** Higher than anything the heater stands beside, m. */
const HIGH = 100;
/** A foot a year or two of growth, m. Common practice, no source. */
const USUAL_GROWTH = { value: 0.3, kind: 'length' } as const;
/** A slab and its gravel, m. Common practice, no source. */
const USUAL_PAD = { value: 0.1, kind: 'length' } as const;

/** The plan with everything it was made of; what is missing or wrong stands in its reader. */
export interface Plan {
  readonly reader: SurveyReader;
  readonly site: Site;
  readonly objects: readonly DrawnObject[];
}

/** The things of a plan and the heater's place among them; undefined where none is drawn. */
export function planOf(site: Site): Plan | undefined {
  const { view, spot, heater } = site;
  const at = (field: string): Where => ({ collection: 'spots', id: spot, field });
  const placed = isKnown(view, at('planX')) || isKnown(view, at('planY'));
  if (!placed || view.all('planObjects').length === 0) return undefined;
  const reader = new SurveyReader(view);
  for (const field of ['planX', 'planY']) reader.number(at(field));
  reader.numberOr(at('turn'), 0);
  reader.numberOrUsual(at('padHeight'), USUAL_PAD);
  for (const field of ['width', 'depth', 'height'])
    reader.number({ collection: 'heaters', id: heater, field });
  return { reader, site, objects: objectsOf(view, reader) };
}

/** Half-width of a place on the plan by how it is known, m: where its zero lies says nothing. Common practice, no source. */
const PLACED_WITHIN: Readonly<Record<string, number>> = { drawing: 0.05, told: 0.3, assumed: 0.5 };
/** The same of a turn, rad: a heater is set square to something. */
const TURNED_WITHIN = 0.035;

/** The readings the heater's place stands on, their ± as that of a place and not as a share of its coordinates. */
export function parametersOf({ reader, site }: Plan): readonly Parameter[] {
  const spot = site.view.record('spots', site.spot);
  return reader.parameters.map((one) => {
    const field = ['planX', 'planY', 'turn'].find(
      (name) => one.reading === readingPath('spots', site.spot, name),
    );
    const reading = field === undefined ? undefined : spot.reading(field);
    if (reading === undefined || reading.pm !== undefined) return one;
    const plusMinus = field === 'turn' ? TURNED_WITHIN : PLACED_WITHIN[reading.how];
    return plusMinus === undefined ? one : { ...one, plusMinus };
  });
}

/** Everything drawn, its corners checked. */
export function objectsOf(view: JobView, reader: SurveyReader): readonly DrawnObject[] {
  return view.all('planObjects').flatMap(({ id }) => {
    const at = (field: string): Where => ({ collection: 'planObjects', id, field });
    const kind = reader.word(at('kind'));
    const corners = reader.curve(at('corners')).map(([x, y]): place.Point => ({ x, y }));
    if (HANGING.has(kind)) reader.number(at('bottom'));
    else reader.numberOr(at('bottom'), 0);
    reader.numberOr(at('top'), HIGH);
    if (kind === 'shrub') reader.numberOrUsual(at('growth'), USUAL_GROWTH);
    if (kind === 'sprinkler') reader.number(at('growth'));
    if (kind === '' || corners.length === 0) return [];
    const closed = RINGS.has(kind) || (RINGS_WHERE_DRAWN_SO.has(kind) && corners.length > 2);
    const issue = place.shapeIssue({ corners, closed });
    if (issue) reader.wrong.push({ ...issue, where: readingPath('planObjects', id, 'corners') });
    return [{ id, kind, drawn: { corners, closed } }];
  });
}

/** The heater where the values put it. */
export function heaterAt({ site }: Plan, values: Values): Result<place.Placed> {
  const spot = (field: string): number => values(readingPath('spots', site.spot, field));
  const size = (field: string): number => values(readingPath('heaters', site.heater, field));
  const turn = spot('turn');
  const fit = place.placed({
    at: { x: spot('planX'), y: spot('planY') },
    turn: Number.isNaN(turn) ? 0 : turn,
    width: size('width'),
    depth: size('depth'),
    height: size('height'),
    base: spot('padHeight'),
  });
  if (fit.ok) return fit;
  const where = (name: string): string =>
    name === 'base' || name === 'turn'
      ? readingPath('spots', site.spot, name === 'base' ? 'padHeight' : 'turn')
      : readingPath('heaters', site.heater, name);
  return fail(...fit.issues.map((issue) => ({ ...issue, where: where(issue.where) })));
}

/** The things with the heights of the values. A boundary that is a ring is kept as its line: one stands within it. */
export function thingsAt(objects: readonly DrawnObject[], values: Values): Result<readonly DrawnThing[]> {
  const issues: Issue[] = [];
  const things = objects.map(({ id, kind, drawn }): DrawnThing => {
    const read = (field: string, otherwise: number): number => {
      const value = values(readingPath('planObjects', id, field));
      return Number.isNaN(value) ? otherwise : value;
    };
    const bottom = read('bottom', FLAT.has(kind) ? -HIGH : 0);
    const top = read('top', FLAT.has(kind) ? 0 : HIGH);
    const growth = kind === 'shrub' || kind === 'sprinkler' ? read('growth', 0) : 0;
    if (!(top >= bottom)) {
      const where = readingPath('planObjects', id, 'top');
      issues.push({ code: 'contradiction', where, found: top, min: bottom, kind: 'length' });
    }
    const outline = kind === 'property line' ? boundary(drawn) : drawn;
    return { id, kind, ...outline, bottom, top, growth };
  });
  return issues.length > 0 ? fail(...issues) : ok(things);
}

function boundary({ corners, closed }: place.Drawn): place.Drawn {
  return { corners: closed ? [...corners, ...corners.slice(0, 1)] : corners, closed: false };
}

/** The ring of the property line, where one is drawn. */
export function propertyRing(objects: readonly DrawnObject[]): readonly place.Point[] | undefined {
  return objects.find(({ kind, drawn }) => kind === 'property line' && drawn.closed)?.drawn.corners;
}

/** On which side the water is; empty where nobody said. */
export function waterSideOf({ view, heater }: Site): string {
  return wordAt(view, { collection: 'heaters', id: heater, field: 'waterSide' });
}
