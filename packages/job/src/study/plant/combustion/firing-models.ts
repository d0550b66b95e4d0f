/**
 * A heater fired alone: what the meter says it burns, and what the water says it gets. Only from both can one tell a
 * heater that is fouled or starved from one that is well.
 */
import { evaluate, fail, gas, properties, type Recorder, type Result, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import { answers } from '../air/answer.ts';
import type { Model, Values } from '../model.ts';
import { noneApply, notApplicable } from '../passed-on.ts';
import { recordOf } from '../record-of.ts';

const TESTS = 'firingTests';
const FACTS = ['clocked-input', 'water-heat'] as const;
const METER = ['dial', 'turns', 'seconds', 'meterPressure'] as const;
/** A compensated index has counted the gas at its own base: what the meter feels is not asked, K. */
const UNUSED_TEMPERATURE = 288.15;
const ALTITUDE: Where = { collection: 'site', id: '-', field: 'altitude' };
const HEATING_VALUE: Where = { collection: 'gasSupply', id: '-', field: 'heatingValue' };

/** The two facts of a heater; none before it is lit. */
export function firingModels(view: JobView, heater: string, cold: boolean): readonly Model[] {
  const test = recordOf(view, { collection: TESTS, field: 'heater', id: heater });
  const taken = view.all(TESTS).some(({ id }) => id === test);
  const key = (name: string): FactKey => `heater/${heater}/${name}`;
  if (cold && !taken) return [noneApply(`firing.${heater}`, FACTS.map(key))];
  const fuel = new SurveyReader(view).wordOr({ collection: 'heaters', id: heater, field: 'fuel' }, '');
  const timed = view.record(TESTS, test).reading('dial') !== undefined;
  // A propane tank has no meter, and its heater no input to clock.
  const metered = fuel !== 'propane' || timed;
  return [
    metered ? clockedModel(view, key('clocked-input'), test) : notApplicable(key('clocked-input')),
    waterModel(view, key('water-heat'), test),
  ];
}

function at(test: string, field: string): Where {
  return { collection: TESTS, id: test, field };
}

function clockedModel(view: JobView, fact: FactKey, test: string): Model {
  const reader = new SurveyReader(view);
  for (const field of METER) reader.number(at(test, field));
  const compensated =
    reader.wordOr({ collection: 'gasSupply', id: '-', field: 'meterCompensated' }, 'no') === 'yes';
  if (!compensated) reader.number(at(test, 'meterTemperature'));
  reader.number(ALTITUDE);
  reader.number(HEATING_VALUE);
  const of = (values: Values, field: string): number => values(readingPath(TESTS, test, field));
  const find = (values: Values, recorder?: Recorder): Result<number> => {
    const clocked = gas.clockMeter(
      {
        dial: of(values, 'dial'),
        revolutions: of(values, 'turns'),
        seconds: of(values, 'seconds'),
        secondsUncertainty: 0,
        gaugePressure: of(values, 'meterPressure'),
        atmosphere: properties.standardPressureAt(values(readingPath('site', '-', 'altitude'))),
        temperature: compensated ? UNUSED_TEMPERATURE : of(values, 'meterTemperature'),
        compensation: compensated ? 'temperature-and-pressure' : 'none',
        heatingValue: values(readingPath('gasSupply', '-', 'heatingValue')),
      },
      recorder,
    );
    if (!clocked.ok)
      return fail(...clocked.issues.map((one) => ({ ...one, where: placeOf(test, one.where) })));
    return { ok: true, value: clocked.value.heatInput.value };
  };
  return answers({ fact, kind: 'heat-rate', reader, find });
}

const PLACES: Readonly<Record<string, string>> = {
  revolutions: 'turns',
  temperature: 'meterTemperature',
  pressure: 'meterPressure',
};

function placeOf(test: string, where: string): ReadingPath {
  return readingPath(TESTS, test, PLACES[where] ?? where);
}

function waterModel(view: JobView, fact: FactKey, test: string): Model {
  const reader = new SurveyReader(view);
  for (const field of ['waterFlow', 'waterIn', 'waterOut']) reader.number(at(test, field));
  const of = (values: Values, field: string): number => values(readingPath(TESTS, test, field));
  const find = (values: Values, recorder?: Recorder): Result<number> => {
    const [before, behind] = [of(values, 'waterIn'), of(values, 'waterOut')];
    const carried = {
      rise: behind - before,
      flow: of(values, 'waterFlow'),
      // The flow meter stands in the water before the heater.
      density: properties.densityOfWater(before),
      specificHeat: properties.specificHeatOfWater((before + behind) / 2),
    };
    return evaluate(water.heatCarried, carried, recorder);
  };
  return answers({ fact, kind: 'heat-rate', reader, find });
}
