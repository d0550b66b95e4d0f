/** What the circuit carries, and what that takes off its voltage. */
import { evaluate, fail, ok, power } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { type Fed, ofCircuit } from './circuit-of.ts';
import { numberModel } from './number-model.ts';
import { copperOf, takeCopper } from './wire.ts';

/** A heater has a circuit of its own. Common practice, no source. */
const USUAL_OTHER_LOAD = { value: 0, kind: 'current' } as const;
/** Conductors are taken to be as warm as the table of resistances has them: the safe side, K. */
const CONDUCTOR_TEMPERATURE = 348.15;

export function loadModels(view: JobView, fed: Fed): readonly Model[] {
  return [loadModel(view, fed), dropModel(view, fed), startModel(view, fed)];
}

function takeLoad(reader: SurveyReader, fed: Fed): (values: Values) => number {
  reader.number({ collection: 'heaters', id: fed.heater, field: 'amperes' });
  reader.numberOrUsual(ofCircuit(fed, 'otherLoad'), USUAL_OTHER_LOAD);
  const own = readingPath('heaters', fed.heater, 'amperes');
  const other = readingPath('circuits', fed.circuit, 'otherLoad');
  return (values) => values(own) + values(other);
}

function loadModel(view: JobView, fed: Fed): Model {
  const reader = new SurveyReader(view);
  const load = takeLoad(reader, fed);
  return numberModel({
    fact: `heater/${fed.heater}/circuit-load`,
    kind: 'current',
    reader,
    find: (values, recorder) => {
      recorder?.given({ id: 'power.circuit-load', value: load(values), kind: 'current' });
      return ok(load(values));
    },
  });
}

/** Share of the voltage lost between panel and heater with everything on the circuit running. */
function dropModel(view: JobView, fed: Fed): Model {
  const reader = new SurveyReader(view);
  takeCopper(reader, fed);
  for (const field of ['length', 'voltsIdle']) reader.number(ofCircuit(fed, field));
  const load = takeLoad(reader, fed);
  const phases = Number(reader.wordOr(ofCircuit(fed, 'phases'), '1'));
  return numberModel({
    fact: `heater/${fed.heater}/voltage-drop`,
    kind: 'ratio',
    reader,
    find: (values, recorder) => {
      const copper = copperOf(fed, values);
      if (!copper.ok) return copper;
      const of = (field: string): number => values(readingPath('circuits', fed.circuit, field));
      const warm = {
        tableResistance: copper.value.strandedResistance * of('length'),
        temperature: CONDUCTOR_TEMPERATURE,
      };
      const resistance = evaluate(power.conductorResistance, warm, recorder);
      if (!resistance.ok) return resistance;
      const loaded = { current: load(values), resistance: resistance.value, phases };
      const lost = evaluate(power.voltageDrop, loaded, recorder);
      if (!lost.ok) return lost;
      const where = readingPath('circuits', fed.circuit, 'voltsIdle');
      if (of('voltsIdle') > 0) return ok(lost.value / of('voltsIdle'));
      return fail({ code: 'no-solution', where, reason: 'no-voltage' });
    },
  });
}

/** What is left as the pump starts, from the supply's impedance as idle and running readings give it. */
function startModel(view: JobView, fed: Fed): Model {
  const reader = new SurveyReader(view);
  const fields = ['voltsIdle', 'voltsRunning', 'runningCurrent', 'startCurrent'] as const;
  for (const field of fields) reader.number(ofCircuit(fed, field));
  return numberModel({
    fact: `heater/${fed.heater}/volts-at-start`,
    kind: 'voltage',
    reader,
    find: (values, recorder) => {
      const of = (field: (typeof fields)[number]): number =>
        values(readingPath('circuits', fed.circuit, field));
      const voltsIdle = of('voltsIdle');
      if (of('voltsRunning') > voltsIdle) {
        const where = readingPath('circuits', fed.circuit, 'voltsRunning');
        return fail({ code: 'contradiction', where, reason: 'voltage-rises-under-load' });
      }
      const readings = { voltsIdle, voltsRunning: of('voltsRunning'), current: of('runningCurrent') };
      const impedance = evaluate(power.supplyImpedance, readings, recorder);
      if (!impedance.ok) return impedance;
      const start = { voltsIdle, impedance: impedance.value, startCurrent: of('startCurrent') };
      return evaluate(power.voltageUnderLoad, start, recorder);
    },
  });
}
