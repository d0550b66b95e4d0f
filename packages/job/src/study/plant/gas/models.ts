/** The models of the gas line. */
import { SurveyReader } from '../../facts/survey-reader.ts';
import { plannedHeaters } from '../../heaters.ts';
import type { Model } from '../../model.ts';
import type { JobView } from '../../view.ts';
import { heaterInputModel } from './altitude-model.ts';
import { gasCodeModel } from './code-model.ts';
import { takeFuel } from './fuel.ts';
import { type GasPlan, gasPlan } from './gas-plan.ts';
import { gasLoadModel } from './load-model.ts';
import { gasPhysicalModel } from './physical-model.ts';
import { meterModel, workingPressureModel } from './supply-model.ts';
import { supplyPressureModels } from './supply-pressure.ts';
import { tankModel } from './tank-model.ts';

export function gasModels(view: JobView): readonly Model[] {
  const planned = (build: (reader: SurveyReader, plan: GasPlan) => Model): Model => {
    const reader = new SurveyReader(view);
    const plan = gasPlan(reader);
    takeFuel(reader, plan.fuelName);
    return build(reader, plan);
  };
  return [
    planned(gasLoadModel),
    planned(gasCodeModel),
    planned(gasPhysicalModel),
    ...supplyPressureModels(view),
    workingPressureModel(new SurveyReader(view)),
    meterModel(new SurveyReader(view)),
    tankModel(new SurveyReader(view)),
    ...plannedHeaters(view).map((id) => heaterInputModel(new SurveyReader(view), id)),
  ];
}
