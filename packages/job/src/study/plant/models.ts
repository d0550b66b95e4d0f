/**
 * The plant of a job: its models, one for each part that can be known by itself, so that what is missing in one
 * leaves the others standing.
 */
import { SurveyReader } from '../facts/survey-reader.ts';
import type { Model } from '../model.ts';
import type { JobView } from '../view.ts';
import { gasCodeModel } from './gas/code-model.ts';
import { takeFuel } from './gas/fuel.ts';
import { type GasPlan, gasPlan } from './gas/gas-plan.ts';
import { gasLoadModel } from './gas/load-model.ts';

export function plantModels(view: JobView): readonly Model[] {
  return [...gasModels(view)];
}

function gasModels(view: JobView): readonly Model[] {
  const planned = (build: (reader: SurveyReader, plan: GasPlan) => Model): Model => {
    const reader = new SurveyReader(view);
    const plan = gasPlan(reader);
    takeFuel(reader, plan.fuelName);
    return build(reader, plan);
  };
  return [planned(gasLoadModel), planned(gasCodeModel)];
}
