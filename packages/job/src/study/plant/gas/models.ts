/** The models of the gas line. */

import { plannedHeaters } from '../../facts/heaters.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { heaterInputModel } from './altitude-model.ts';
import { gasCodeModel } from './code-model.ts';
import { takeFuel } from './fuel.ts';
import { gasPlan } from './gas-plan.ts';
import { gasLoadModel } from './load-model.ts';
import { gasPhysicalModel } from './physical-model.ts';
import { gasPipes } from './pipes.ts';
import { meterModel, workingPressureModel } from './supply-model.ts';
import { supplyPressureModels } from './supply-pressure.ts';
import { tankModel } from './tank-model.ts';
import { zonesOf } from './zones.ts';

export function gasModels(view: JobView): readonly Model[] {
  const reader = new SurveyReader(view);
  const plan = gasPlan(reader);
  const supplyPressures = supplyPressureModels(view, plan);
  takeFuel(reader, plan.fuelName);
  const zones = zonesOf(plan);
  const piped = reader.fork();
  const pipes = gasPipes(piped, plan);
  return [
    gasLoadModel(reader, { plan, zones }),
    gasCodeModel(piped.fork(), { plan, zones, pipes }),
    gasPhysicalModel(piped, { plan, pipes }),
    ...supplyPressures,
    workingPressureModel(new SurveyReader(view)),
    meterModel(new SurveyReader(view)),
    tankModel(new SurveyReader(view)),
    ...plannedHeaters(view).map((id) => heaterInputModel(new SurveyReader(view), id)),
  ];
}
