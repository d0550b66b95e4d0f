/** Heights of the basins of the loop over the pool, and where the valves stand to serve one of them. */
import type { water } from '@firstfire/engine';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import { wordOf } from './loop-states.ts';
import type { LoopRun } from './runs.ts';

const FALL = readingPath('waterLoop', '-', 'spillwayHeight');

/** A basin that spills into another of the loop stands over it by the fall of its spillway; the others are level. */
export function takeLevels(
  reader: SurveyReader,
  basins: readonly string[],
): (values: Values) => readonly water.Basin[] {
  const raised = basins.filter((id) =>
    basins.includes(wordOf(reader.view, { collection: 'basins', id, field: 'spillway' })),
  );
  if (raised.length > 0) reader.number({ collection: 'waterLoop', id: '-', field: 'spillwayHeight' });
  return (values) => basins.map((id) => ({ id, level: raised.includes(id) ? values(FALL) : 0 }));
}

export interface ValvePosition {
  readonly from: water.Openings;
  readonly to: water.Openings;
}

/** Served, a basin gives through its own suction and takes through its own return; the first of either stands in. */
export function valvePosition(runs: readonly LoopRun[], basin: string): ValvePosition {
  const way = (role: string): water.Openings => {
    const ends = runs.filter((run) => run.role === role).map((run) => run.basin);
    const served = ends.includes(basin) ? basin : ends[0];
    return served === undefined ? {} : { [served]: 1 };
  };
  return { from: way('suction'), to: way('return') };
}
