/** The most water that a condensing heater’s flue gas drops, at full input and the stack temperature its maker states. */
import { combustion, evaluate, ok, properties } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { answers } from './answer.ts';
import { orZero } from './room.ts';
import { atHeater, type HeaterSpot } from './spot.ts';

/** Excess air of a fan burner at its leanest of the trade, which leaves least water in the gas. Common practice, no source. */
const LEAST_EXCESS = 0.2;
/** Air to the burner, K (10 °C). */
const COOL_AIR = 283.15;
/** Of the condensate, kg/m3. */
const WATER_DENSITY = 1000;

export function condensateModel(view: JobView, { heater }: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  for (const field of ['input', 'stackTemperature']) reader.number(atHeater(heater, field));
  const propane = reader.word(atHeater(heater, 'fuel')) === 'propane';
  reader.numberOr({ collection: 'site', id: '-', field: 'altitude' }, 0);
  const fuel = combustion.COMBUSTION_FUELS[propane ? 'propane' : 'natural'];
  return answers({
    fact: `heater/${heater}/condensate`,
    kind: 'volume-flow',
    reader,
    find: (values, recorder) => {
      const altitude = orZero(values(readingPath('site', '-', 'altitude')));
      const state = combustion.flueStateOf(fuel, {
        excessAir: LEAST_EXCESS,
        stackTemperature: values(readingPath('heaters', heater, 'stackTemperature')),
        airTemperature: COOL_AIR,
        airPressure: properties.standardPressureAt(altitude),
      });
      const heatInput = values(readingPath('heaters', heater, 'input'));
      const found = evaluate(combustion.condensate, { ...state, heatInput }, recorder);
      return found.ok ? ok(found.value / WATER_DENSITY) : found;
    },
  });
}
