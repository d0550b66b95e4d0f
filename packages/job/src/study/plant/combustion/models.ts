/** What the analyser says of each heater’s flue gas: part of the air line. */
import {
  combustion,
  evaluate,
  fail,
  type Issue,
  ok,
  properties,
  Recorder,
  type Result,
} from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { noneApply, passedOn } from '../passed-on.ts';
import { recordOf } from '../record-of.ts';
import { firingModels } from './firing-models.ts';

const TESTS = 'flueTests';

const FACTS = ['stack-temperature', 'flue-oxygen', 'co-air-free', 'dew-point', 'flue-loss'] as const;

/** Stages at which the heater has not been lit yet. */
const COLD: ReadonlySet<unknown> = new Set(['survey', 'plan', 'install']);

export function combustionModels(view: JobView): readonly Model[] {
  const cold = COLD.has(view.record('job', '-').reading('stage')?.value);
  return plannedHeaters(view).flatMap((heater) => {
    const test = recordOf(view, { collection: TESTS, field: 'heater', id: heater });
    const taken = view.all(TESTS).some(({ id }) => id === test);
    const fired = firingModels(view, heater, cold);
    const key = (name: string): FactKey => `heater/${heater}/${name}`;
    if (cold && !taken) return [noneApply(`flue.${heater}`, FACTS.map(key)), ...fired];
    const stack = { collection: TESTS, id: test, field: 'stackTemperature' };
    return [
      passedOn(view, `heater/${heater}/stack-temperature`, stack),
      oxygenModel(view, heater, test),
      monoxideModel(view, heater, test),
      dewPointModel(view, heater, test),
      lossModel(view, heater, test),
      ...fired,
    ];
  });
}

/** A model of one fact from readings of one test. */
interface Plain {
  readonly fact: FactKey;
  readonly kind: 'ratio' | 'temperature' | 'volume-fraction';
  readonly compute: (values: Values, recorder?: Recorder) => Result<number>;
}

function model({ parameters, missing, wrong }: SurveyReader, { fact, kind, compute }: Plain): Model {
  return {
    id: `combustion.${fact}`,
    provides: [fact],
    parameters,
    missing,
    wrong,
    run: (values) => {
      const found = compute(values);
      return found.ok ? { ok: true, outputs: [{ fact, value: found.value, kind }] } : found;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      compute(values, recorder);
      return recorder.steps;
    },
  };
}

/** The sample of a test: by its oxygen, or by its carbon dioxide where only that was read. */
interface Sample {
  readonly fuel: combustion.CombustionFuel;
  readonly excessAir: (values: Values, recorder?: Recorder) => Result<number>;
}

function takeSample(reader: SurveyReader, heater: string, test: string): Sample {
  const at = (field: string): Where => ({ collection: TESTS, id: test, field });
  const byOxygen = reader.has(at('oxygen')) || !reader.has(at('carbonDioxide'));
  reader.number(at(byOxygen ? 'oxygen' : 'carbonDioxide'));
  const name = reader.word({ collection: 'heaters', id: heater, field: 'fuel' });
  const fuel = combustion.COMBUSTION_FUELS[name === 'propane' ? 'propane' : 'natural'];
  const path = readingPath(TESTS, test, byOxygen ? 'oxygen' : 'carbonDioxide');
  return {
    fuel,
    excessAir: (values, recorder) => {
      const read = values(path);
      const sample = byOxygen ? { oxygen: read } : { carbonDioxide: read };
      return named(combustion.excessAirOf(fuel, sample, recorder), () => path);
    },
  };
}

function named(found: Result<number>, reading: (issue: Issue) => ReadingPath): Result<number> {
  return found.ok ? found : fail(...found.issues.map((issue) => ({ ...issue, where: reading(issue) })));
}

/** Oxygen as read, or what goes with the carbon dioxide. */
function oxygenOf({ fuel, excessAir }: Sample, values: Values, recorder?: Recorder): Result<number> {
  const excess = excessAir(values, recorder);
  if (!excess.ok) return excess;
  const { airDemand, dryFlue } = combustion.flameBalance(fuel);
  return evaluate(combustion.flueOxygen, { airDemand, dryFlue, excessAir: excess.value }, recorder);
}

function oxygenModel(view: JobView, heater: string, test: string): Model {
  const fact: FactKey = `heater/${heater}/flue-oxygen`;
  const oxygen: Where = { collection: TESTS, id: test, field: 'oxygen' };
  const reader = new SurveyReader(view);
  if (reader.has(oxygen) || !reader.has({ ...oxygen, field: 'carbonDioxide' }))
    return passedOn(view, fact, oxygen);
  const sample = takeSample(reader, heater, test);
  return model(reader, {
    fact,
    kind: 'ratio',
    compute: (values, recorder) => oxygenOf(sample, values, recorder),
  });
}

function monoxideModel(view: JobView, heater: string, test: string): Model {
  const reader = new SurveyReader(view);
  const sample = takeSample(reader, heater, test);
  reader.number({ collection: TESTS, id: test, field: 'carbonMonoxide' });
  const path = readingPath(TESTS, test, 'carbonMonoxide');
  return model(reader, {
    fact: `heater/${heater}/co-air-free`,
    kind: 'volume-fraction',
    compute: (values, recorder) => {
      const oxygen = oxygenOf(sample, values, recorder);
      if (!oxygen.ok) return oxygen;
      const read = { carbonMonoxide: values(path), oxygen: oxygen.value };
      return named(evaluate(combustion.coAirFree, read, recorder), () => path);
    },
  });
}

/** Sea level where nobody knows the altitude: the highest dew point. */
function takePressure(reader: SurveyReader): (values: Values) => number {
  const where = { collection: 'site', id: '-', field: 'altitude' };
  const known = reader.has(where);
  if (known) reader.number(where);
  const path = readingPath('site', '-', 'altitude');
  return (values) => properties.standardPressureAt(known ? values(path) : 0);
}

function dewPointModel(view: JobView, heater: string, test: string): Model {
  const reader = new SurveyReader(view);
  const { fuel, excessAir } = takeSample(reader, heater, test);
  const airPressure = takePressure(reader);
  return model(reader, {
    fact: `heater/${heater}/dew-point`,
    kind: 'temperature',
    compute: (values, recorder) => {
      const excess = excessAir(values, recorder);
      if (!excess.ok) return excess;
      const at = { excessAir: excess.value, airPressure: airPressure(values) };
      return combustion.flueDewPoint(fuel, at, recorder);
    },
  });
}

/** Share of the gross heat that leaves by the flue. */
function lossModel(view: JobView, heater: string, test: string): Model {
  const reader = new SurveyReader(view);
  const { fuel, excessAir } = takeSample(reader, heater, test);
  const airPressure = takePressure(reader);
  for (const field of ['stackTemperature', 'airTemperature'])
    reader.number({ collection: TESTS, id: test, field });
  const at = (field: string): ReadingPath => readingPath(TESTS, test, field);
  return model(reader, {
    fact: `heater/${heater}/flue-loss`,
    kind: 'ratio',
    compute: (values, recorder) => {
      const excess = excessAir(values, recorder);
      if (!excess.ok) return excess;
      const state = combustion.flueStateOf(fuel, {
        excessAir: excess.value,
        stackTemperature: values(at('stackTemperature')),
        airTemperature: values(at('airTemperature')),
        airPressure: airPressure(values),
      });
      const gross = evaluate(combustion.grossEfficiency, state, recorder);
      if (gross.ok) return ok(1 - gross.value);
      return named(gross, ({ where }) => at(where === 'airTemperature' ? where : 'stackTemperature'));
    },
  });
}
