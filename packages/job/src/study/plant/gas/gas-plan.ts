/** The gas system as surveyed: its structure, and the readings its numbers come from. */
import type { gas } from '@firstfire/engine';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';

/** Root of the piping: the outlet of the meter, or of the tank's last regulator. */
export const SUPPLY = 'supply';

export interface PlannedSegment {
  readonly id: string;
  readonly label: string;
  readonly from: string;
  readonly to: string;
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

/** Reads the structure; what is missing or wrong is kept by the reader. */
export function gasPlan(reader: SurveyReader): GasPlan {
  const fuel = reader.word({ collection: 'gasSupply', id: '-', field: 'fuel' });
  return {
    fuelName: fuel === 'propane' ? 'propane' : 'natural',
    segments: reader.view.all('gasSegments').map((record) => segment(reader, record.id)),
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

/** A lump that has a place but no size yet is missing: it is not taken for nothing. */
function lump(reader: SurveyReader): PlannedLoad[] {
  const where = { collection: 'gasSupply', id: '-', field: 'existingLoad' };
  if (!reader.has(where) && !reader.has({ ...where, field: 'existingLoadAt' })) return [];
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

function segment(reader: SurveyReader, id: string): PlannedSegment {
  const at = (field: string): Where => ({ collection: 'gasSegments', id, field });
  return {
    id,
    label: label(reader, 'gasSegments', id),
    from: reader.word(at('from')),
    to: reader.word(at('to')),
  };
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
