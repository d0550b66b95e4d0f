/** The water loop as surveyed: its parts, its states, and the pad the engine makes of them for given values. */
import { properties, type water } from '@firstfire/engine';
import { plannedHeaters } from '../../facts/heaters.ts';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import {
  takeBypass,
  takeFilter,
  takeHeater,
  takePump,
  takeTemperature,
  theOne,
  WATER_TEMPERATURE,
} from './equipment.ts';
import { takeLevels, type ValvePosition, valvePosition } from './levels.ts';
import { type LoopStates, loopStates, wordOf } from './loop-states.ts';
import { type LoopRun, takeRuns, WATER_RUNS } from './runs.ts';

export interface WaterPlan {
  readonly pump: string;
  readonly filter: string;
  readonly heaters: readonly string[];
  readonly states: LoopStates;
  readonly runs: readonly LoopRun[];
  readonly bypass: boolean;
  readonly position: (basin: string) => ValvePosition;
  /** What people call a record. */
  readonly nameOf: (collection: string, id: string) => string;
  /** Undefined where so much is missing that nothing can be laid out. */
  readonly spec: ((values: Values) => water.PadSpec) | undefined;
}

const ALTITUDE = readingPath('site', '-', 'altitude');

/** Reads all that every flow in the loop depends on; what is missing or wrong is kept by the reader. */
export function waterPlan(reader: SurveyReader): WaterPlan {
  const states = loopStates(reader.view);
  const pump = theOne(reader, 'pumps');
  const filter = theOne(reader, 'filters');
  const heaters = plannedHeaters(reader.view);
  const runs = takeRuns(reader);
  for (const role of ['suction', 'return']) needRole(reader, runs, role);
  const parts = {
    levels: takeLevels(reader, states.basins),
    pump: takePump(reader, pump),
    filter: takeFilter(reader, filter),
    bank: takeBank(reader, heaters, runs),
    bypass: heaters.length === 0 ? undefined : takeBypass(reader, runs),
    altitude: takeAltitude(reader),
  };
  takeTemperature(reader);
  const positions = new Map(states.basins.map((basin) => [basin, valvePosition(runs, basin)]));
  return {
    pump,
    filter,
    heaters,
    states,
    runs,
    bypass: parts.bypass !== undefined,
    position: (basin) => positions.get(basin) ?? valvePosition(runs, basin),
    nameOf: (collection, id) => wordOf(reader.view, { collection, id, field: 'name' }) || id,
    spec: specOf(parts, runs),
  };
}

/** Sea level where the altitude is not known: it only tells how near the water is to boiling. */
function takeAltitude(reader: SurveyReader): (values: Values) => number {
  const where = { collection: 'site', id: '-', field: 'altitude' };
  const known = reader.has(where);
  if (known) reader.number(where);
  return (values) => (known ? values(ALTITUDE) : 0);
}

/** A loop has at least one run of the role; the first thing to know of it is that there is one. */
function needRole(reader: SurveyReader, runs: readonly LoopRun[], role: string): void {
  const records = reader.view.all(WATER_RUNS);
  const there = (id: string): boolean =>
    reader.wordOr({ collection: WATER_RUNS, id, field: 'role' }, role) === role;
  if (runs.some((run) => run.role === role) || records.some(({ id }) => there(id))) return;
  reader.word({ collection: WATER_RUNS, id: '-', field: 'role' });
}

function takeBank(
  reader: SurveyReader,
  heaters: readonly string[],
  runs: readonly LoopRun[],
): ((values: Values) => water.HeaterBank) | undefined {
  if (heaters.length === 0) return undefined;
  const built = heaters.map((id) => takeHeater(reader, id, branchOf(id, runs)));
  const manifold: Where = { collection: 'waterLoop', id: '-', field: 'manifold' };
  const arrangement = heaters.length > 1 ? reader.word(manifold) : 'direct';
  const supply = takeHeader(reader, { heaters, runs, role: 'supply-header' });
  const back = takeHeader(reader, { heaters, runs, role: 'return-header' });
  return (values) => ({
    arrangement: arrangement === 'reverse' ? 'reverse' : 'direct',
    heaters: built.map((heater) => heater(values)),
    supplyHeader: supply.map((run) => [run.pipe(values)]),
    returnHeader: back.map((run) => [run.pipe(values)]),
  });
}

function branchOf(id: string, runs: readonly LoopRun[]): readonly LoopRun[] {
  return runs.filter((run) => run.role === 'heater-branch' && run.heater === id);
}

interface Header {
  readonly heaters: readonly string[];
  readonly runs: readonly LoopRun[];
  readonly role: string;
}

/** One section between each heater and the next; a single one that was read stands for all of them. */
function takeHeader(reader: SurveyReader, { heaters, runs, role }: Header): readonly LoopRun[] {
  const between = heaters.length - 1;
  const sections = runs.filter((run) => run.role === role);
  const [only] = sections;
  if (between === 0) return [];
  if (sections.length === 1 && only !== undefined) return Array.from({ length: between }, () => only);
  if (sections.length === between) return sections;
  reader.wrong.push({
    code: 'ill-formed',
    where: readingPath(WATER_RUNS, sections[0]?.id ?? '-', 'role'),
    reason: 'header-sections',
  });
  return [];
}

interface Parts {
  readonly levels: (values: Values) => readonly water.Basin[];
  readonly pump: ((values: Values) => water.PadPump) | undefined;
  readonly filter: (values: Values) => water.PadFilter;
  readonly bank: ((values: Values) => water.HeaterBank) | undefined;
  readonly bypass: ((values: Values) => water.Bypass) | undefined;
  readonly altitude: (values: Values) => number;
}

function specOf(parts: Parts, runs: readonly LoopRun[]): WaterPlan['spec'] {
  const { pump, bank, bypass } = parts;
  if (pump === undefined) return undefined;
  return (values) => ({
    basins: parts.levels(values),
    suctions: branches('suction', runs, values),
    suction: [],
    pump: pump(values),
    discharge: lineOf('pump-to-filter', runs, values),
    filter: parts.filter(values),
    approach: lineOf('filter-to-heater', runs, values),
    ...(bank ? { bank: bank(values) } : {}),
    ...(bypass ? { bypass: bypass(values) } : {}),
    departure: [],
    returns: branches('return', runs, values),
    temperature: values(WATER_TEMPERATURE),
    airPressure: properties.standardPressureAt(parts.altitude(values)),
  });
}

function lineOf(role: string, runs: readonly LoopRun[], values: Values): water.Line {
  return runs.filter((run) => run.role === role).map((run) => run.pipe(values));
}

/** Runs of one basin follow each other; each basin has one way to the pad and one back. */
function branches(role: string, runs: readonly LoopRun[], values: Values): water.BasinBranch[] {
  const lines = new Map<string, water.PipeRun[]>();
  for (const run of runs) {
    if (run.role !== role) continue;
    lines.set(run.basin, [...(lines.get(run.basin) ?? []), run.pipe(values)]);
  }
  return [...lines].map(([basin, line]) => ({ basin, line }));
}
