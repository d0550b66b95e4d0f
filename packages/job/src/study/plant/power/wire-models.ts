/** The wire against its load and its breaker, and the ground that runs with it. */
import { evaluate, fail, ok, power, type Recorder, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { type Fed, ofCircuit } from './circuit-of.ts';
import { numberModel } from './number-model.ts';
import { breakerMost, copperOf, raceway, takeCopper, type Wire, wireCurrent } from './wire.ts';

export function wireModels(view: JobView, fed: Fed): readonly Model[] {
  return [
    ofWire(view, fed, { name: 'wire-ampacity', find: wireCurrent }),
    ofWire(view, fed, { name: 'breaker-most', find: breakerMost }),
    groundModel(view, fed),
  ];
}

interface OfWire {
  readonly name: string;
  readonly find: (wire: Wire, values: Values, recorder?: Recorder) => Result<number>;
}

function ofWire(view: JobView, fed: Fed, { name, find }: OfWire): Model {
  const reader = new SurveyReader(view);
  takeCopper(reader, fed);
  const conditions = raceway(reader, fed);
  return numberModel({
    fact: `heater/${fed.heater}/${name}`,
    kind: 'current',
    reader,
    assumed: conditions.assumed,
    find: (values, recorder) => {
      const copper = copperOf(fed, values);
      if (!copper.ok) return copper;
      return find({ copper: copper.value, fed, raceway: conditions }, values, recorder);
    },
  });
}

/** Least equipment ground: by the breaker, and larger where the conductors are larger than the breaker needs. */
function groundModel(view: JobView, fed: Fed): Model {
  const reader = new SurveyReader(view);
  takeCopper(reader, fed);
  reader.number(ofCircuit(fed, 'breaker'));
  const conditions = raceway(reader, fed);
  return numberModel({
    fact: `heater/${fed.heater}/equipment-ground-least`,
    kind: 'wire-size',
    reader,
    assumed: conditions.assumed,
    find: (values, recorder) => {
      const where = readingPath('circuits', fed.circuit, 'breaker');
      const breaker = values(where);
      const row = catalog.power.groundOfBreaker(breaker);
      const fitted = copperOf(fed, values);
      if (!fitted.ok) return fitted;
      const needed = leastConductor({ fed, raceway: conditions, breaker }, values);
      if (row === undefined || needed === undefined) {
        return fail({ code: 'no-solution', where, reason: 'above-largest-size' });
      }
      recorder?.given({ id: 'power.table-ground', value: row.area, kind: 'wire-size' });
      const sizes = { tableArea: row.area, fittedArea: fitted.value.area, neededArea: needed.area };
      const least = evaluate(power.equipmentGround, sizes, recorder);
      return least.ok ? ok(least.value) : least;
    },
  });
}

/** The thinnest conductor of the tables that this breaker protects in this raceway. */
function leastConductor(
  { fed, raceway: conditions, breaker }: Omit<Wire, 'copper'> & { readonly breaker: number },
  values: Values,
): catalog.power.CopperConductor | undefined {
  return catalog.power.COPPER.find((copper) => {
    const most = breakerMost({ copper, fed, raceway: conditions }, values);
    return most.ok && most.value >= breaker;
  });
}
