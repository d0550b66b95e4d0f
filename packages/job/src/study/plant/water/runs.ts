/** The pipe runs of the loop: what each is made of, and the readings its numbers come from. */
import type { water } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { plannedHeaters } from '../../facts/heaters.ts';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import { basinOfRun } from './loop-states.ts';

export const WATER_RUNS = 'waterRuns';

/**
 * Stands for the K of all fittings over that of the tables: 1, and for one and the same fitting handbooks differ by
 * 20 to 50 %, so that every flow is known no better than this lets it be.
 */
export const FITTINGS: ReadingPath = readingPath(WATER_RUNS, '-', 'fittings');
const FITTINGS_PLUS_MINUS = 0.3;

export interface LoopRun {
  readonly id: string;
  readonly role: string;
  /** Basin of a suction or a return. */
  readonly basin: string;
  /** Heater of a branch. */
  readonly heater: string;
  /** m. */
  readonly insideDiameter: number;
  /** The pipe with a share of its length and fittings. */
  readonly pipe: (values: Values, share?: number) => water.PipeRun;
}

const PIPES: Readonly<Record<string, string>> = {
  'pvc-40': 'pvc-schedule-40',
  'pvc-80': 'pvc-schedule-80',
  'cpvc-40': 'cpvc-schedule-40',
  'cpvc-80': 'cpvc-schedule-80',
  'copper-L': 'copper-l',
};

/** A pool valve turns a plug in a body of three ports; a check valve here is a swing check. */
const CATALOGUE: Readonly<Record<string, string>> = {
  'elbow-90': 'elbow-90',
  'elbow-45': 'elbow-45',
  'sweep-90': 'elbow-90-long',
  'tee-run': 'tee-through',
  'tee-branch': 'tee-branch',
  valve: 'three-way-plug-through',
  'check-valve': 'swing-check-100',
  entrance: 'entrance-flush',
  exit: 'exit',
};

/** Perry's Table 6-4. */
const UNION_K = 0.04;

/** Takes every run; one whose pipe is not known is left out, and the reader keeps what is missing. */
export function takeRuns(reader: SurveyReader): readonly LoopRun[] {
  const heaters = plannedHeaters(reader.view);
  const only = heaters.length === 1 ? (heaters[0] ?? '') : '';
  const runs = reader.view.all(WATER_RUNS).flatMap(({ id }) => takeRun(reader, id, only) ?? []);
  reader.parameters.push({
    reading: FITTINGS,
    value: 1,
    kind: 'ratio',
    plusMinus: FITTINGS_PLUS_MINUS,
    assumed: false,
  });
  return runs;
}

/** `only` is the one heater there is, which a branch that names none must lead to. */
function takeRun(reader: SurveyReader, id: string, only: string): LoopRun | undefined {
  const at = (field: string): Where => ({ collection: WATER_RUNS, id, field });
  const role = reader.word(at('role'));
  const heater = reader.wordOr(at('heater'), only);
  reader.number(at('length'));
  const length = readingPath(WATER_RUNS, id, 'length');
  const made = pipeOf(reader, at('size'));
  if (role === '' || made === undefined) return undefined;
  const { insideDiameter, roughness } = made;
  const k = sumOfK(reader.counts(at('fittings')), insideDiameter);
  const basin = role === 'suction' || role === 'return' ? takeBasin(reader, id) : '';
  const pipe = (values: Values, share = 1): water.PipeRun => ({
    type: 'pipe',
    insideDiameter,
    length: share * values(length),
    wall: { method: 'darcy', roughness },
    k: share * k * values(FITTINGS),
  });
  return { id, role, basin, heater, insideDiameter, pipe };
}

function takeBasin(reader: SurveyReader, id: string): string {
  const basin = basinOfRun(reader.view, id);
  const basins = reader.view.all('basins').map((record) => record.id);
  const where = { collection: WATER_RUNS, id, field: 'basin' };
  if (basin === '') reader.word(where);
  else if (!basins.includes(basin)) reader.refuse(where, { found: basin, expected: basins });
  return basin;
}

function pipeOf(
  reader: SurveyReader,
  where: Where,
): { insideDiameter: number; roughness: number } | undefined {
  const material = reader.word({ ...where, field: 'material' });
  const size = reader.word(where);
  if (material === '' || size === '') return undefined;
  const pipe = catalog.water.waterPipe(PIPES[material] ?? '');
  const found = pipe === undefined ? undefined : catalog.water.waterPipeSize(pipe, size);
  if (pipe === undefined || found === undefined) {
    reader.refuse(where, { found: size, expected: pipe?.sizes.map((one) => one.id) ?? [] });
    return undefined;
  }
  return { insideDiameter: found.insideDiameter, roughness: pipe.roughness };
}

function sumOfK(counts: Readonly<Record<string, number>>, insideDiameter: number): number {
  return Object.entries(counts).reduce((sum, [name, count]) => sum + count * kOf(name, insideDiameter), 0);
}

function kOf(name: string, insideDiameter: number): number {
  if (name === 'union') return UNION_K;
  return catalog.water.fittingK(CATALOGUE[name] ?? name, insideDiameter) ?? 0;
}
