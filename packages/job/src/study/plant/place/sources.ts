/** Where each fact of the place line comes from when nothing is drawn: a reading, a figure of the trade, or nothing. */
import { place } from '@firstfire/engine';
import { USUAL_CLEARANCE } from '@firstfire/reference';
import type { FactKey } from '../../facts/book.ts';
import { fieldFact } from '../../facts/field-fact.ts';
import type { Where } from '../../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import { spotOf } from '../spot-of.ts';

export type Source =
  | { readonly at: Where }
  | { readonly usual: number }
  | { readonly unknown: readonly ReadingPath[] }
  | 'not-applicable';

/** What the place line needs to know of one heater before it asks anything. */
export interface Site {
  readonly view: JobView;
  readonly heater: string;
  readonly spot: string;
  /** Where it stands; empty where nobody has said: it is then asked as if outdoors. */
  readonly where: string;
}

export function siteOf(view: JobView, heater: string): Site {
  const spot = spotOf(view, heater);
  return { view, heater, spot, where: wordAt(view, { collection: 'spots', id: spot, field: 'where' }) };
}

export function isOutdoors({ where }: Site): boolean {
  return where === 'outdoors' || where === '';
}

export function wordAt(view: JobView, { collection, id, field }: Where): string {
  const fact = fieldFact(collection, field, view.record(collection, id).reading(field));
  return fact.state === 'word' ? fact.value : '';
}

export function isKnown(view: JobView, { collection, id, field }: Where): boolean {
  const { state } = fieldFact(collection, field, view.record(collection, id).reading(field));
  return state !== 'unknown' && state !== 'wrong';
}

/** Fact → field of the spot; asked wherever the heater stands. */
const ANYWHERE: Readonly<Record<string, string>> = {
  pad: 'pad',
  'base-height': 'padHeight',
  'flood-level': 'floodLevel',
  'hot-surfaces-guarded': 'hotSurfacesGuarded',
  'service-room': 'clearanceFront',
  stands: 'where',
  'own-enclosure': 'ownEnclosure',
  'wall-mounting': 'wallMounting',
};

/** The same, asked outdoors only. */
const OUTDOORS: Readonly<Record<string, string>> = {
  'ground-height': 'padHeight',
  'under-structure': 'underStructure',
  'property-line-distance': 'propertyLine',
  setback: 'setback',
  'water-edge-distance': 'waterEdge',
  'snow-depth': 'snowDepth',
  sprinkler: 'sprinkler',
};

/** Fact → field and what is counted of it near the spot: where there is none, no distance is asked. */
const NEARBY: Readonly<Record<string, readonly [field: string, kind: string]>> = {
  'air-conditioner-distance': ['airConditionerDistance', 'air conditioner'],
  'regulator-vent-distance': ['regulatorVentDistance', 'regulator vent'],
  'electrical-distance': ['electricalDistance', 'electrical'],
};

/** Every fact of a heater and its faces. */
export function sourcesOf(site: Site): Map<FactKey, Source> {
  const { view, heater, spot, where } = site;
  const at = (field: string): Source => ({ at: { collection: 'spots', id: spot, field } });
  const outdoors = isOutdoors(site);
  const sources = new Map<FactKey, Source>();
  const set = (name: string, source: Source): void => {
    sources.set(`heater/${heater}/${name}`, source);
  };
  for (const [name, field] of Object.entries(ANYWHERE)) set(name, at(field));
  for (const [name, field] of Object.entries(OUTDOORS)) set(name, outdoors ? at(field) : 'not-applicable');
  for (const [name, near] of Object.entries(NEARBY)) set(name, nearSource(site, near));
  if (!outdoors) set('air-conditioner-distance', 'not-applicable');
  set('height', { at: { collection: 'heaters', id: heater, field: 'height' } });
  set(
    'sound-limit',
    outdoors ? { at: { collection: 'site', id: '-', field: 'soundLimit' } } : 'not-applicable',
  );
  set('garage-height', where === 'garage' ? at('padHeight') : 'not-applicable');
  const fuel = wordAt(view, { collection: 'heaters', id: heater, field: 'fuel' });
  set('tank-distance', fuel === 'natural' ? 'not-applicable' : at('tankDistance'));
  for (const face of place.FACES) faceSources(site, face, sources);
  return sources;
}

function nearSource({ view, spot }: Site, [field, kind]: readonly [string, string]): Source {
  const at: Where = { collection: 'spots', id: spot, field };
  if (isKnown(view, at)) return { at };
  const near = fieldFact('spots', 'near', view.record('spots', spot).reading('near'));
  const count = near.state === 'counts' ? near.value[kind] : undefined;
  if (count === undefined) return { unknown: [readingPath('spots', spot, 'near')] };
  return count === 0 ? 'not-applicable' : { at };
}

const MEASURED: Readonly<Record<place.Face, string>> = {
  left: 'clearanceLeft',
  right: 'clearanceRight',
  back: 'clearanceBack',
  front: 'clearanceFront',
  above: 'clearanceAbove',
};

type NamedSide = keyof typeof USUAL_CLEARANCE;

const NAMEPLATE: Readonly<Record<NamedSide, string>> = {
  water: 'clearanceWater',
  far: 'clearanceFar',
  back: 'clearanceBack',
  front: 'clearanceFront',
  above: 'clearanceAbove',
};

/** Faces of which an unlisted heater is asked. */
const AROUND: ReadonlySet<place.Face> = new Set<place.Face>(['left', 'right', 'back']);

function faceSources(site: Site, face: place.Face, sources: Map<FactKey, Source>): void {
  const { view, heater, spot } = site;
  const key = (name: string): FactKey => `face/${faceId(heater, face)}/${name}`;
  const nameplate = nameplateSource(site, face);
  const read = typeof nameplate === 'object' && 'at' in nameplate && isKnown(view, nameplate.at);
  const side = sideOf(view, heater, face);
  sources.set(key('clearance'), { at: { collection: 'spots', id: spot, field: MEASURED[face] } });
  sources.set(key('nameplate-clearance'), nameplate);
  sources.set(
    key('usual-clearance'),
    read || !isOutdoors(site)
      ? 'not-applicable'
      : side === undefined
        ? { unknown: [readingPath('heaters', heater, 'waterSide')] }
        : { usual: USUAL_CLEARANCE[side] },
  );
  const listed: Where = { collection: 'heaters', id: heater, field: 'listed' };
  const asked = AROUND.has(face) && isKnown(view, listed);
  sources.set(key('listed'), asked ? { at: listed } : 'not-applicable');
}

/** Where the nameplate gives the clearance of a face. */
export function nameplateSource({ view, heater }: Site, face: place.Face): Source {
  const side = sideOf(view, heater, face);
  if (side === undefined) return { unknown: [readingPath('heaters', heater, 'waterSide')] };
  return { at: { collection: 'heaters', id: heater, field: NAMEPLATE[side] } };
}

/** A face as the nameplate names it; undefined where nobody knows on which side the water is. */
export function sideOf(view: JobView, heater: string, face: place.Face): NamedSide | undefined {
  if (face !== 'left' && face !== 'right') return face;
  const water = wordAt(view, { collection: 'heaters', id: heater, field: 'waterSide' });
  if (water === '') return undefined;
  return water === face ? 'water' : 'far';
}

/** Id of a face as a subject. */
export function faceId(heater: string, face: place.Face): string {
  return `${heater}.${face}`;
}
