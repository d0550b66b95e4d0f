/**
 * What the picture of the water line shows: the loop from basin to basin with flow, pressure, temperature and velocity
 * of every part at each pump speed, filter clean and due; where the bypass may stand; the window of each pressure
 * switch. All from the physical model of the plant and the parts its findings stand on; nothing is computed twice.
 */
import { recordFacts } from '../facts/record-facts.ts';
import { type JobView, readingPath } from '../facts/view.ts';
import { WATER_TEMPERATURE } from '../plant/water/equipment.ts';
import { wordOf } from '../plant/water/loop-states.ts';
import { WATER_RUNS } from '../plant/water/runs.ts';
import { nameOf } from './gas-paint.ts';
import { stateShown } from './water-flowing.ts';
import { bypassShown, switchShown } from './water-limits.ts';
import type {
  WaterBasinShown,
  WaterHeaterShown,
  WaterPart,
  WaterPicture,
  WaterRunShown,
  WaterSpeedShown,
} from './water-shown.ts';
import { lackedBy, lacksOf, type WaterSurveyed, waterSurveyed } from './water-surveyed.ts';

const LOOP_RECORDS = ['pumps', 'pumpSpeeds', 'filters', WATER_RUNS] as const;

/** The picture of a job's water line. */
export function waterPictureOf(view: JobView): WaterPicture {
  const read = waterSurveyed(view);
  const { plan } = read;
  const base = lackedBy(read.reader);
  const one = (collection: string, id: string): WaterPart => ({
    id,
    name: nameOf(view, collection, id, ''),
    missing: lacksOf(
      lackedBy(read.reader, ...read.states.map(({ reader }) => reader)),
      `${collection}/${id}`,
    ),
  });
  const pumpHeight = lacksOf(base, 'waterLoop/-', ['pumpAbovePool']);
  const pump = one('pumps', plan.pump);
  return {
    drawn: LOOP_RECORDS.some((collection) => view.all(collection).length > 0),
    arrangement:
      wordOf(view, { collection: 'waterLoop', id: '-', field: 'manifold' }) === 'reverse'
        ? 'reverse'
        : 'direct',
    basins: basinsShown(read),
    pump: { ...pump, missing: [...pump.missing, ...pumpHeight] },
    filter: one('filters', plan.filter),
    heaters: plan.heaters.map((id) => heaterShown(read, one('heaters', id))),
    runs: view.all(WATER_RUNS).map(({ id }) => runShown(read, one(WATER_RUNS, id))),
    speeds: view.all('pumpSpeeds').map(({ id }) => speedShown(read, one('pumpSpeeds', id))),
    bypass: bypassShown(read),
    states: read.states.map((state) => stateShown(read, state)),
    missing: base,
    temperatureAssumed: read.reader.parameters.some(
      (taken) => taken.reading === WATER_TEMPERATURE && taken.assumed,
    ),
  };
}

function numberOf(
  view: JobView,
  where: { collection: string; id: string; field: string },
): number | undefined {
  const { fact } = recordFacts(where.collection, view.record(where.collection, where.id)).at(where.field);
  return fact.state === 'number' ? fact.value : undefined;
}

/** Those that the loop reaches; before it reaches any, those of the job. */
function basinsShown({ view, plan, reader }: WaterSurveyed): WaterBasinShown[] {
  const { basins } = plan.states;
  const all = view.all('basins').map(({ id }) => id);
  const fall = lacksOf(lackedBy(reader), 'waterLoop/-', ['spillwayHeight']);
  return (basins.length > 0 ? basins : all.slice(0, 1)).map((id) => {
    const spills = basins.includes(wordOf(view, { collection: 'basins', id, field: 'spillway' }));
    const level = numberOf(view, { collection: 'waterLoop', id: '-', field: 'spillwayHeight' });
    return {
      id,
      name: nameOf(view, 'basins', id, ''),
      missing: spills ? fall : [],
      level: spills ? level : 0,
    };
  });
}

function heaterShown(read: WaterSurveyed, part: WaterPart): WaterHeaterShown {
  const at = (field: string) => ({ collection: 'heaters', id: part.id, field });
  return {
    ...part,
    least: numberOf(read.view, at('flowLeast')),
    most: numberOf(read.view, at('flowGreatest')),
    switch: switchShown(read, part.id),
  };
}

function runShown({ view, plan }: WaterSurveyed, part: WaterPart): WaterRunShown {
  const word = (field: string): string => wordOf(view, { collection: WATER_RUNS, id: part.id, field });
  const made = plan.runs.find(({ id }) => id === part.id);
  return {
    ...part,
    role: word('role'),
    basin: made?.basin ?? word('basin'),
    heater: made?.heater ?? word('heater'),
    size: word('size'),
    insideDiameter: made?.insideDiameter,
  };
}

function speedShown({ view }: WaterSurveyed, part: WaterPart): WaterSpeedShown {
  const speed = numberOf(view, { collection: 'pumpSpeeds', id: part.id, field: 'speed' });
  const missing = speed === undefined ? [readingPath('pumpSpeeds', part.id, 'speed')] : [];
  const heating = wordOf(view, { collection: 'pumpSpeeds', id: part.id, field: 'heating' }) !== 'no';
  return { ...part, missing, speed, heating };
}
