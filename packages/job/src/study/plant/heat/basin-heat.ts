/** What a basin asks of its heaters: to hold it on the design day, to warm it in time, to reach its temperature at all. */
import { fail, heat, type Issue, ok, Recorder, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Model, Output, Run, Values } from '../model.ts';
import { recordMeasures } from './basin-model.ts';
import { type BasinShape, measureBasin, takeShape } from './basin-shape.ts';
import { recordDay } from './day-working.ts';
import { type DesignDay, sunOf, surfaceOf, takeDesignDay, weatherOf } from './design-day.ts';
import { type Burner, heatOutput, takeHeating } from './heating.ts';

export interface BasinHeat {
  readonly shape: BasinShape;
  readonly day: DesignDay;
}

/** Takes what the loss of a basin at its set temperature stands on. */
export function takeBasinHeat(reader: SurveyReader, id: string): BasinHeat {
  reader.number({ collection: 'basins', id, field: 'setTemperature' });
  return { shape: takeShape(reader, id), day: takeDesignDay(reader, id) };
}

/** Loss (W) at the set temperature on the design day. */
export function holdLoad(basin: BasinHeat, values: Values, recorder?: Recorder): Result<number> {
  const balance = holdBalance(basin, values, recorder);
  return balance.ok ? ok(balance.value.total) : balance;
}

/** The same by the ways the heat leaves. */
export function holdBalance(
  { shape, day }: BasinHeat,
  values: Values,
  recorder?: Recorder,
): Result<heat.SurfaceBalance> {
  const measured = measureBasin(shape, values);
  if (!measured.ok) return named(shape.id, measured.issues);
  const weather = weatherOf(day, measured.value, values);
  if (recorder !== undefined) {
    recordMeasures(recorder, shape, measured);
    recordDay(recorder, day, weather);
  }
  const state = { ...weather, waterTemperature: values(readingPath('basins', shape.id, 'setTemperature')) };
  const balance = heat.surfaceBalance(surfaceOf(day, measured.value), state, recorder);
  return balance.ok ? balance : named(shape.id, balance.issues);
}

/** Heat (W) that the mean sun of the month would give the water, which the day leaves out. */
export function sunLeftOut({ shape, day }: BasinHeat, values: Values): number | undefined {
  const measured = measureBasin(shape, values);
  const sun = sunOf(day, values);
  if (!measured.ok || sun === undefined) return undefined;
  const waterTemperature = values(readingPath('basins', shape.id, 'setTemperature'));
  const state = { ...weatherOf(day, measured.value, values), waterTemperature, sun };
  const balance = heat.surfaceBalance(surfaceOf(day, measured.value), state);
  return balance.ok ? 0 - balance.value.sun : undefined;
}

function named(id: string, issues: readonly Issue[]): { ok: false; issues: readonly Issue[] } {
  return fail(...issues.map((issue) => ({ ...issue, where: `basins/${id}/${issue.where}` })));
}

/** One basin with the heaters that warm it, ready to be asked how it warms up. */
export interface BasinWarming {
  readonly basin: BasinHeat;
  readonly burners: readonly Burner[];
  readonly question: (values: Values, recorder?: Recorder) => Result<heat.WarmUpQuestion>;
}

/** Takes what the warm-up of a basin stands on. */
export function takeWarmUp(reader: SurveyReader, id: string): BasinWarming {
  const basin = takeBasinHeat(reader, id);
  const burners = takeHeating(reader, id);
  reader.number({ collection: 'basins', id, field: 'startTemperature' });
  const question = (values: Values, recorder?: Recorder): Result<heat.WarmUpQuestion> => {
    const measured = measureBasin(basin.shape, values);
    if (!measured.ok) return named(id, measured.issues);
    const output = heatOutput(burners, values, recorder);
    if (!output.ok) return output;
    return ok({
      setting: surfaceOf(basin.day, measured.value),
      weather: weatherOf(basin.day, measured.value, values),
      volume: measured.value.volume,
      start: values(readingPath('basins', id, 'startTemperature')),
      target: values(readingPath('basins', id, 'setTemperature')),
      output: output.value,
    });
  };
  return { basin, burners, question };
}

/** The plateau and the warm-up of one basin with the heaters it has. */
export function warmUpModel(reader: SurveyReader, id: string): Model {
  const { basin, question } = takeWarmUp(reader, id);
  const key = (name: string): FactKey => `basin/${id}/${name}`;
  return {
    id: `heat.warm-up.${id}`,
    provides: [key('warm-up-time'), key('plateau')],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const asked = question(values);
      return asked.ok ? warmUpRun(asked.value, key) : asked;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      recordMeasures(recorder, basin.shape, measureBasin(basin.shape, values));
      const asked = question(values, recorder);
      if (asked.ok) {
        recordDay(recorder, basin.day, asked.value.weather);
        heat.warmUp(asked.value, recorder);
      }
      return recorder.steps;
    },
  };
}

/** Water that is warm already needs no time; a temperature never reached takes for ever, which no number can say. */
function warmUpRun(asked: heat.WarmUpQuestion, key: (name: string) => FactKey): Run {
  const plateau = heat.plateau(asked);
  if (!plateau.ok) return plateau;
  const outputs: Output[] = [{ fact: key('plateau'), value: plateau.value, kind: 'temperature' }];
  if (asked.start >= asked.target) {
    return { ok: true, outputs: [...outputs, { fact: key('warm-up-time'), value: 0, kind: 'time' }] };
  }
  if (plateau.value <= asked.target) {
    return { ok: true, outputs: [...outputs, { fact: key('warm-up-time'), value: NEVER, kind: 'time' }] };
  }
  const issues = heat.questionIssues(asked);
  if (issues.length > 0) return { ok: false, issues };
  const value = heat.warmUpTime(asked);
  return {
    ok: true,
    outputs: [...outputs, { fact: key('warm-up-time'), value: Math.min(value, NEVER), kind: 'time' }],
  };
}

/** A year: longer than anyone waits, so that what is never reached fails by a wide margin and stays a number, s. */
const NEVER = 365 * 86_400;
