/** The gas system as surveyed: its structure, and the readings its numbers come from. */
import { gas, type Source } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../view.ts';

/** Root of the piping: the outlet of the meter, or of the tank's last regulator. */
export const SUPPLY = 'supply';

export interface PlannedSegment {
  readonly id: string;
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly length: ReadingPath;
  /** Undefined where both ends stand at one height. */
  readonly rise: ReadingPath | undefined;
  /** What it is made of, for a given inlet pressure: corrugated tubing has a table for each range. */
  readonly carrier: (inletPressure: number) => gas.Carrier;
  /** Of the pipe wall, m; of corrugated tubing zero, its table knows. */
  readonly roughness: number;
  /** Sum of L/D of its fittings. */
  readonly fittings: number;
  readonly sizeSource: Source;
}

export interface PlannedRegulator {
  readonly id: string;
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly setPressure: ReadingPath;
}

export interface PlannedLoad {
  readonly id: string;
  readonly label: string;
  readonly kind: 'heater' | 'appliance' | 'lump';
  readonly node: string;
  readonly input: ReadingPath;
}

export interface GasPlan {
  readonly fuelName: gas.FuelName;
  readonly segments: readonly PlannedSegment[];
  readonly regulators: readonly PlannedRegulator[];
  readonly loads: readonly PlannedLoad[];
}

const PIPE_BY_MATERIAL = new Map(catalog.gas.PIPES.map((pipe) => [String(pipe.id), pipe]));

/** What an L/D of a gas fitting is called in the catalogue; the run of a tee counts nothing. */
const FITTING: Readonly<Record<string, catalog.gas.FittingId | undefined>> = {
  'elbow-45': 'elbow-45',
  'elbow-90': 'elbow-90',
  'tee-branch': 'tee-branch',
  'return-bend': 'return-bend',
  valve: 'gate-valve',
};

/** Reads the structure; what is missing or wrong is kept by the reader. */
export function gasPlan(reader: SurveyReader): GasPlan {
  const fuel = reader.word({ collection: 'gasSupply', id: '-', field: 'fuel' });
  return {
    fuelName: fuel === 'propane' ? 'propane' : 'natural',
    segments: reader.view.all('gasSegments').flatMap((record) => segment(reader, record.id) ?? []),
    regulators: reader.view.all('gasRegulators').map((record) => regulator(reader, record.id)),
    loads: [...equipment(reader), ...lump(reader)],
  };
}

/** A heater that is to be replaced hangs on the pipe no more. */
function equipment(reader: SurveyReader): PlannedLoad[] {
  const loads: PlannedLoad[] = [];
  for (const kind of ['heater', 'appliance'] as const) {
    const collection = kind === 'heater' ? 'heaters' : 'gasAppliances';
    for (const { id } of reader.view.all(collection)) {
      const at = (field: string): Where => ({ collection, id, field });
      if (kind === 'heater' && reader.wordOr(at('planned'), 'yes') === 'no') continue;
      const node = reader.word(at('node'));
      // The nameplate's own figure for this altitude comes before its sea-level rating.
      const field = kind === 'heater' && reader.has(at('altitudeInput')) ? 'altitudeInput' : 'input';
      reader.number(at(field));
      loads.push({
        id,
        label: label(reader, collection, id),
        kind,
        node,
        input: readingPath(collection, id, field),
      });
    }
  }
  return loads;
}

function lump(reader: SurveyReader): PlannedLoad[] {
  const where = { collection: 'gasSupply', id: '-', field: 'existingLoad' };
  if (!reader.has(where)) return [];
  reader.number(where);
  const first = reader.view
    .all('gasSegments')
    .find(({ id }) => reader.wordOr({ collection: 'gasSegments', id, field: 'from' }, '') === SUPPLY);
  const usual =
    first === undefined
      ? SUPPLY
      : reader.wordOr({ collection: 'gasSegments', id: first.id, field: 'to' }, SUPPLY);
  const node = reader.wordOr({ ...where, field: 'existingLoadAt' }, usual);
  return [
    {
      id: 'existing',
      label: 'existing load',
      kind: 'lump',
      node,
      input: readingPath('gasSupply', '-', 'existingLoad'),
    },
  ];
}

function segment(reader: SurveyReader, id: string): PlannedSegment | undefined {
  const at = (field: string): Where => ({ collection: 'gasSegments', id, field });
  const from = reader.word(at('from'));
  const to = reader.word(at('to'));
  reader.number(at('length'));
  const rise = reader.has(at('rise')) ? readingPath('gasSegments', id, 'rise') : undefined;
  if (rise !== undefined) reader.number(at('rise'));
  const made = material(reader, id);
  if (made === undefined) return undefined;
  const counts = reader.counts(at('fittings'));
  const ratios = Object.entries(counts).map(([name, count]) => {
    const known = FITTING[name];
    return known === undefined ? 0 : count * catalog.gas.fitting(known).lengthOverDiameter;
  });
  return {
    id,
    label: label(reader, 'gasSegments', id),
    from,
    to,
    length: readingPath('gasSegments', id, 'length'),
    rise,
    fittings: ratios.reduce((sum, one) => sum + one, 0),
    ...made,
  };
}

type Made = Pick<PlannedSegment, 'carrier' | 'roughness' | 'sizeSource'>;

function material(reader: SurveyReader, id: string): Made | undefined {
  const where: Where = { collection: 'gasSegments', id, field: 'size' };
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
  return { carrier: () => carrier, roughness: pipe.roughness, sizeSource: pipe.source };
}

function corrugated(reader: SurveyReader, where: Where, size: string): Made | undefined {
  const ehd = Number(size.replace(/^EHD\s*/i, ''));
  const low = catalog.gas.CSST_LOW_PRESSURE;
  const high = catalog.gas.CSST_TWO_PSI;
  if (!low.sizes.some((one) => one.ehd === ehd)) {
    reader.refuse(where, { found: size, expected: low.sizes.map((one) => `EHD ${one.ehd}`) });
    return undefined;
  }
  const carrierLow: gas.Carrier = { type: 'corrugated', ehd, table: low };
  const carrierHigh: gas.Carrier = { type: 'corrugated', ehd, table: high };
  const carrier = (inletPressure: number): gas.Carrier =>
    gas.codeEquation(inletPressure) === 'low' ? carrierLow : carrierHigh;
  return { carrier, roughness: 0, sizeSource: low.source };
}

function regulator(reader: SurveyReader, id: string): PlannedRegulator {
  const at = (field: string): Where => ({ collection: 'gasRegulators', id, field });
  reader.number(at('setPressure'));
  return {
    id,
    label: label(reader, 'gasRegulators', id),
    from: reader.word(at('from')),
    to: reader.word(at('to')),
    setPressure: readingPath('gasRegulators', id, 'setPressure'),
  };
}

export function label(reader: SurveyReader, collection: string, id: string): string {
  return reader.wordOr({ collection, id, field: 'name' }, id);
}
