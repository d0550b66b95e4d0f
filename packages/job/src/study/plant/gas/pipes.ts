/** What each section of the gas piping is made of, and the readings its numbers come from. */
import { gas, type Source } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import type { GasPlan } from './gas-plan.ts';

export interface GasPipe {
  readonly length: ReadingPath;
  /** Undefined where both ends stand at one height. */
  readonly rise: ReadingPath | undefined;
  /** For a given inlet pressure: corrugated tubing has a table for each range. */
  readonly carrier: (inletPressure: number) => gas.Carrier;
  /** Of the wall, m; of corrugated tubing zero, its table knows. */
  readonly roughness: number;
  /** Sum of L/D of its fittings. */
  readonly fittings: number;
  /** What bends of corrugated tubing beyond those its tables hold add to its length, m. */
  readonly addedLength: number;
  readonly source: Source;
}

const PIPE_BY_MATERIAL = new Map(catalog.gas.PIPES.map((pipe) => [String(pipe.id), pipe]));

/** The catalogue's name of a fitting; the run of a tee counts nothing. */
const FITTING: Readonly<Record<string, catalog.gas.FittingId | undefined>> = {
  'elbow-45': 'elbow-45',
  'elbow-90': 'elbow-90',
  'tee-branch': 'tee-branch',
  'return-bend': 'return-bend',
  valve: 'gate-valve',
};

/** Takes every section's pipe; what is missing or wrong is kept by the reader, and the section left out. */
export function gasPipes(reader: SurveyReader, plan: GasPlan): ReadonlyMap<string, GasPipe> {
  const pipes = new Map<string, GasPipe>();
  for (const { id } of plan.segments) {
    const pipe = pipeOf(reader, id);
    if (pipe !== undefined) pipes.set(id, pipe);
  }
  return pipes;
}

function pipeOf(reader: SurveyReader, id: string): GasPipe | undefined {
  const at = (field: string): Where => ({ collection: 'gasSegments', id, field });
  reader.number(at('length'));
  const rises = reader.has(at('rise'));
  if (rises) reader.number(at('rise'));
  const made = material(reader, at('size'));
  if (made === undefined) return undefined;
  const counts = Object.entries(reader.counts(at('fittings')));
  return {
    ...made,
    length: readingPath('gasSegments', id, 'length'),
    rise: rises ? readingPath('gasSegments', id, 'rise') : undefined,
    fittings: counts.reduce((sum, [name, count]) => sum + count * lengthOverDiameter(name), 0),
    addedLength: made.roughness === 0 ? lengthOfBends(counts.reduce((sum, [, count]) => sum + count, 0)) : 0,
  };
}

/** The tables of corrugated tubing hold four bends and fittings; each one more counts as so much tubing. */
function lengthOfBends(bends: number): number {
  return gas.corrugatedAddedLength.kernel({ count: Math.max(0, bends - BENDS_IN_TABLES) });
}

const BENDS_IN_TABLES = 4;

/** Length (m) of a section as it counts: its own, and what its bends add. */
export function lengthOf(pipe: GasPipe, values: Values): number {
  return values(pipe.length) + pipe.addedLength;
}

function lengthOverDiameter(name: string): number {
  const known = FITTING[name];
  return known === undefined ? 0 : catalog.gas.fitting(known).lengthOverDiameter;
}

/** A corrugated tube has no wall roughness of its own: its table knows. */
type Made = Pick<GasPipe, 'carrier' | 'roughness' | 'source'>;

function material(reader: SurveyReader, where: Where): Made | undefined {
  const name = reader.word({ ...where, field: 'material' });
  const size = reader.word(where);
  if (name === '' || size === '') return undefined;
  if (name === 'csst') return corrugated(reader, where, size);
  const pipe = PIPE_BY_MATERIAL.get(name);
  const found = pipe === undefined ? undefined : catalog.gas.pipeSize(pipe, size);
  if (pipe === undefined || found === undefined) {
    reader.refuse(where, { found: size, expected: pipe?.sizes.map((one) => one.id) ?? [] });
    return undefined;
  }
  const carrier: gas.Carrier = { type: 'bore', insideDiameter: found.insideDiameter };
  return { carrier: () => carrier, roughness: pipe.roughness, source: pipe.source };
}

function corrugated(reader: SurveyReader, where: Where, size: string): Made | undefined {
  const ehd = Number(size.replace(/^EHD\s*/i, ''));
  const low = catalog.gas.CSST_LOW_PRESSURE;
  if (!catalog.gas.CSST_SIZES.includes(ehd)) {
    reader.refuse(where, { found: size, expected: catalog.gas.CSST_SIZES.map((one) => `EHD ${one}`) });
    return undefined;
  }
  const carrierLow: gas.Carrier = { type: 'corrugated', ehd, table: low };
  const carrierHigh: gas.Carrier = { type: 'corrugated', ehd, table: catalog.gas.CSST_TWO_PSI };
  const carrier = (inletPressure: number): gas.Carrier =>
    gas.codeEquation(inletPressure) === 'low' ? carrierLow : carrierHigh;
  return { carrier, roughness: 0, source: low.source };
}
