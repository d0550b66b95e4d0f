/** The reading behind an issue of the engine, which names the part of the pad it is about. */
import type { Issue } from '@firstfire/engine';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import { PUMP_HEIGHT, WATER_TEMPERATURE } from './equipment.ts';
import { WATER_RUNS } from './runs.ts';
import type { WaterPlan } from './water-plan.ts';

export function readingOf(plan: WaterPlan, issue: Issue): Issue {
  return { ...issue, where: pathOf(plan, issue.where) };
}

/** By the beginning of the place; what has none of these names a pipe. */
function pathOf({ pump, filter }: WaterPlan, where: string): ReadingPath {
  const heater = /^heaters?\.([^.]+)\.(\w+)/.exec(where);
  if (heater) return readingPath('heaters', heater[1] ?? '', HEATER_FIELDS[heater[2] ?? ''] ?? 'loss');
  const paths: Readonly<Record<string, ReadingPath>> = {
    'pump.curve': readingPath('pumps', pump, 'curve'),
    pump: PUMP_HEIGHT,
    speed: readingPath('pumps', pump, 'speedFull'),
    loading: readingPath('filters', filter, 'dirtyRise'),
    'filter.clean.flow': readingPath('filters', filter, 'cleanFlow'),
    'filter.clean': readingPath('filters', filter, 'cleanLoss'),
    filterInlet: PUMP_HEIGHT,
    filterOutlet: PUMP_HEIGHT,
    filter: readingPath('filters', filter, 'dirtyRise'),
    'bypass.valve': readingPath('waterLoop', '-', 'bypassCv'),
    basins: readingPath('waterLoop', '-', 'spillwayHeight'),
    temperature: WATER_TEMPERATURE,
    airPressure: readingPath('site', '-', 'altitude'),
  };
  const found = Object.keys(paths).find((start) => where.startsWith(start));
  return (found === undefined ? undefined : paths[found]) ?? readingPath(WATER_RUNS, '-', 'length');
}

const HEATER_FIELDS: Readonly<Record<string, string>> = {
  loss: 'loss',
  elevation: 'heightAbovePool',
  inletPressure: 'heightAbovePool',
  outletPressure: 'heightAbovePool',
};
