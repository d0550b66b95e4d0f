/** What a job begins with: one of each thing every job has, joined up, so that its readings can be asked for. */
import type { Edit } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';

export interface NewSite {
  readonly name: string;
  readonly country: 'US' | 'CA';
  readonly region: string;
  readonly fuel: 'natural' | 'propane';
  readonly basin: 'pool' | 'spa' | 'both';
  readonly where: 'outdoors' | 'indoors';
}

type Told = Readonly<Record<string, string>>;

/** A record with what is told of it already. */
function record(collection: string, element: string, told: Told): Edit[] {
  const set = Object.entries(told).map(
    ([field, value]): Edit => ({
      type: 'set',
      collection,
      ...(element === '-' ? {} : { element }),
      field,
      value: readingOf({ value, how: 'told' }),
    }),
  );
  return element === '-' ? set : [{ type: 'add', collection, element }, ...set];
}

/** With the usual ± of what is assumed, 20 %. *Common practice, no source.* */
const SAME_FLOW = readingOf({ value: 1, unit: '1', how: 'assumed' });

/** A new heater at a new site: piping from the supply straight to it, to be branched when the tree is drawn. */
export function newSite(site: NewSite): readonly Edit[] {
  return [...begun(site, 'new'), ...heater('h1', 'yes', site.fuel)];
}

/**
 * The everyday replacement: the old heater beside the new, the house as one lump on the supply's end of the pipe, and the
 * flow found through the old heater for the loop. That the new one holds the water back as the old one did is assumed,
 * and stands among the readings as such.
 */
export function swap(site: NewSite): readonly Edit[] {
  return [
    ...begun(site, 'swap'),
    ...heater('old', 'no', site.fuel),
    ...heater('h1', 'yes', site.fuel),
    ...record('gasSupply', '-', { existingLoadAt: 'supply' }),
    { type: 'set', collection: 'waterLoop', field: 'flowShare', value: SAME_FLOW },
  ];
}

function begun({ name, country, region, fuel, basin, where }: NewSite, kind: 'new' | 'swap'): Edit[] {
  const basins = basin === 'both' ? (['pool', 'spa'] as const) : ([basin] as const);
  return [
    ...record('job', '-', { name, stage: 'survey', kind }),
    ...record('site', '-', { country, ...(region === '' ? {} : { region }) }),
    ...basins.flatMap((use) => record('basins', use, { use, where })),
    ...record('gasSupply', '-', { fuel }),
    ...record('gasSegments', 's1', { from: 'supply', to: 'heater' }),
    ...record('pumps', 'p1', {}),
    ...record('pumpSpeeds', 'v1', { heating: 'yes' }),
    ...record('filters', 'f1', {}),
    ...record('waterRuns', 'suction', { role: 'suction' }),
    ...record('waterRuns', 'return', { role: 'return' }),
    ...record('spots', 'spot1', { heater: 'h1', where: where === 'indoors' ? 'room' : 'outdoors' }),
    ...record('circuits', 'c1', { heater: 'h1' }),
  ];
}

function heater(id: string, planned: 'yes' | 'no', fuel: string): Edit[] {
  return record('heaters', id, { planned, ...(planned === 'yes' ? { fuel, node: 'heater' } : {}) });
}
