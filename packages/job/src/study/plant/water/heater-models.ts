/** What can be said of a heater's water side without its flow: its band, its pressure with a valve shut, its inlet. */
import { Recorder, traced, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { takeCurve, takeTemperature, theOne, WATER_TEMPERATURE } from './equipment.ts';
import { takeLevels } from './levels.ts';
import type { LoopStates } from './loop-states.ts';

type Plain = Pick<Model, 'id' | 'provides' | 'run' | 'explain'>;

function model({ parameters, missing, wrong }: SurveyReader, plain: Plain): Model {
  return { ...plain, parameters, missing, wrong };
}

/** Least and greatest flow on the nameplate, for every state the heater may run in, by its id as a subject. */
export function bandModel(view: JobView, heater: string, states: readonly string[]): Model {
  const reader = new SurveyReader(view);
  const ends = (['flowLeast', 'flowGreatest'] as const).map((field) => ({
    collection: 'heaters',
    id: heater,
    field,
  }));
  const [least = Number.NaN, most = Number.NaN] = ends.map((where) => reader.number(where));
  const greatest = readingPath('heaters', heater, 'flowGreatest');
  if (least >= most) reader.wrong.push({ code: 'contradiction', where: greatest, reason: 'empty-band' });
  const named = states.flatMap((id): (readonly [FactKey, string])[] => [
    [`water-state/${id}/flow-least`, 'flowLeast'],
    [`water-state/${id}/flow-greatest`, 'flowGreatest'],
  ]);
  const bandEnd = (field: string, values: Values): number => values(readingPath('heaters', heater, field));
  return model(reader, {
    id: `water.band.${heater}`,
    provides: named.map(([fact]) => fact),
    run: (values) => ({
      ok: true,
      outputs: named.map(([fact, field]) => ({ fact, value: bandEnd(field, values), kind: 'volume-flow' })),
    }),
    explain: (fact, values) => {
      const field = named.find(([one]) => one === fact)?.[1] ?? 'flowLeast';
      const recorder = new Recorder();
      const reading = readingPath('heaters', heater, field);
      recorder.given({ id: 'reading', value: bandEnd(field, values), kind: 'volume-flow', reading });
      return recorder.steps;
    },
  });
}

/** The most its water side can come under: the pump at its greatest speed against a shut return, and the water above. */
export function shutOffModel(view: JobView, heater: string, { basins }: LoopStates): Model {
  const reader = new SurveyReader(view);
  const pump = theOne(reader, 'pumps');
  const curve = takeCurve(reader, pump);
  const speeds = view.all('pumpSpeeds').map(({ id }) => id);
  const of = (field: string, collection = 'heaters', id = heater): Where => ({ collection, id, field });
  reader.number(of('speedFull', 'pumps', pump));
  for (const id of speeds.length > 0 ? speeds : ['-']) reader.number(of('speed', 'pumpSpeeds', id));
  reader.number(of('heightAbovePool'));
  takeTemperature(reader);
  const levels = takeLevels(reader, basins);
  const fact: FactKey = `heater/${heater}/shut-off-pressure`;
  const pressure = (values: Values, recorder?: Recorder): number => {
    const full = values(readingPath('pumps', pump, 'speedFull'));
    const ratio = Math.max(...speeds.map((id) => values(readingPath('pumpSpeeds', id, 'speed')))) / full;
    const shutOff = curve === undefined ? Number.NaN : water.pumpHead(curve, 0) * ratio ** 2;
    const surface = Math.max(0, ...levels(values).map((one) => one.level));
    const height = shutOff + surface - values(readingPath('heaters', heater, 'heightAbovePool'));
    recorder?.given({ id: 'water.speed-ratio', value: ratio, kind: 'ratio' });
    recorder?.given({ id: 'water.shut-off-head', value: shutOff, kind: 'head' });
    const { density } = water.propertiesAt(values(WATER_TEMPERATURE));
    return traced(water.staticPressure, { height, density }, recorder);
  };
  return model(reader, {
    id: `water.shut-off.${heater}`,
    provides: [fact],
    run: (values) => ({ ok: true, outputs: [{ fact, value: pressure(values), kind: 'pressure' }] }),
    explain: (_fact, values) => {
      const recorder = new Recorder();
      pressure(values, recorder);
      return recorder.steps;
    },
  });
}
