/** Pump, filter, heaters and bypass of the loop, as the engine takes them, each from its own readings. */
import { type Issue, quantity, water } from '@firstfire/engine';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import type { LoopRun } from './runs.ts';

type Built<T> = (values: Values) => T;

/**
 * Exponent of a filter's loss: between the 1 of its bed and the 2 of its valve and laterals. Common practice, no
 * source; the clean figure itself is not touched by it, only flows far from it.
 */
const FILTER_EXPONENT = 1.8;

/** R of an equal-percentage valve. Common practice, no source. */
const RANGEABILITY = 50;

/** The record of a thing the loop is reckoned with once; `-` where there is none yet. */
export function theOne(reader: SurveyReader, collection: string): string {
  const [first, second] = reader.view.all(collection);
  if (second !== undefined) {
    reader.wrong.push({
      code: 'ill-formed',
      where: readingPath(collection, second.id, 'name'),
      reason: 'one-is-reckoned-with',
    });
  }
  return first?.id ?? '-';
}

/** The pump's curve as read; undefined, and kept by the reader, when it is missing or no pump's. */
export function takeCurve(reader: SurveyReader, id: string): water.PumpCurve | undefined {
  const where = { collection: 'pumps', id, field: 'curve' };
  const points = reader.curve(where);
  if (points.length === 0) return undefined;
  const curve = water.pumpCurveOf(points.map(([flow, head]) => ({ flow, head })));
  if (curve.ok) return curve.value;
  reader.wrong.push(...at(where, curve.issues));
  return undefined;
}

function at({ collection, id, field }: Where, issues: readonly Issue[]): Issue[] {
  return issues.map((issue) => ({ ...issue, where: readingPath(collection, id, field) }));
}

export const PUMP_HEIGHT = readingPath('waterLoop', '-', 'pumpAbovePool');

export function takePump(reader: SurveyReader, id: string): Built<water.PadPump> | undefined {
  const curve = takeCurve(reader, id);
  reader.number({ collection: 'pumps', id, field: 'speedFull' });
  reader.number({ collection: 'waterLoop', id: '-', field: 'pumpAbovePool' });
  return curve && ((values) => ({ curve, elevation: values(PUMP_HEIGHT) }));
}

/** The filter's gauge is taken to stand at the height of the pump: no one measures the foot or two between. */
export function takeFilter(reader: SurveyReader, id: string): Built<water.PadFilter> {
  for (const field of ['cleanLoss', 'cleanFlow']) reader.number({ collection: 'filters', id, field });
  const loss = readingPath('filters', id, 'cleanLoss');
  const flow = readingPath('filters', id, 'cleanFlow');
  return (values) => ({
    clean: {
      type: 'point',
      flow: values(flow),
      loss:
        values(loss) / (water.propertiesAt(values(WATER_TEMPERATURE)).density * quantity.STANDARD_GRAVITY),
      exponent: FILTER_EXPONENT,
    },
    elevation: values(PUMP_HEIGHT),
  });
}

export const WATER_TEMPERATURE = readingPath('waterLoop', '-', 'waterTemperature');

/** 27 °C: 10 K of water temperature move the flow by about 1 %. */
const USUAL_TEMPERATURE = { value: 300.15, kind: 'temperature' } as const;

export function takeTemperature(reader: SurveyReader): void {
  reader.numberOrUsual({ collection: 'waterLoop', id: '-', field: 'waterTemperature' }, USUAL_TEMPERATURE);
}

/** Bands are another matter, so that flows are known where the nameplate is not: any flow is inside here. */
const ANY_FLOW: water.FlowBand = { least: 0, most: 100 };

/** Half of a heater's branch stands before it and half after it. */
export function takeHeater(
  reader: SurveyReader,
  id: string,
  branch: readonly LoopRun[],
): Built<water.PadHeater> {
  const of = (field: string): Where => ({ collection: 'heaters', id, field });
  const points = reader.curve(of('loss'));
  reader.number(of('heightAbovePool'));
  const header = reader.has(of('header'));
  if (header) reader.number(of('header'));
  const loss: water.LossLaw = {
    type: 'points',
    flows: points.map(([flow]) => flow),
    losses: points.map(([, head]) => head),
  };
  if (points.length > 0) reader.wrong.push(...at(of('loss'), water.lossLawIssues('loss', loss)));
  const height = readingPath('heaters', id, 'heightAbovePool');
  const bore = readingPath('heaters', id, 'header');
  return (values) => {
    const half = branch.map((run) => run.pipe(values, 0.5));
    const tap = header ? { tapDiameter: values(bore) } : {};
    return { id, loss, band: ANY_FLOW, elevation: values(height), inlet: half, outlet: half, ...tap };
  };
}

export const BYPASS_OPENING = readingPath('waterLoop', '-', 'bypassOpening');
const BYPASS_CV = readingPath('waterLoop', '-', 'bypassCv');

/** The bypass, where there is one; where its handle stands is another reading. */
export function takeBypass(reader: SurveyReader, runs: readonly LoopRun[]): Built<water.Bypass> | undefined {
  const of = (field: string): Where => ({ collection: 'waterLoop', id: '-', field });
  if (reader.word(of('bypass')) !== 'manual') return undefined;
  reader.number(of('bypassCv'));
  const character = reader.word(of('bypassCharacter'));
  const line = runs.filter((run) => run.role === 'bypass');
  // A valve is as wide as the pipe it stands in, or else as the pipe it goes round.
  const pipe = line[0] ?? runs.find((run) => run.role === 'filter-to-heater') ?? runs[0];
  const insideDiameter = pipe?.insideDiameter ?? Number.NaN;
  return (values) => ({
    valve: valveOf(character, values(BYPASS_CV), insideDiameter),
    line: line.map((run) => run.pipe(values)),
  });
}

function valveOf(character: string, coefficient: number, insideDiameter: number): water.Valve {
  switch (character) {
    case 'linear':
      return { type: 'linear', coefficient };
    case 'equal-percentage':
      return { type: 'equal-percentage', coefficient, rangeability: RANGEABILITY };
    default: {
      const type = character === 'butterfly' ? 'butterfly' : 'ball';
      return { type, insideDiameter, openK: water.kOfCoefficient.kernel({ coefficient, insideDiameter }) };
    }
  }
}
