/** The models of the heat line. */
import { recordFacts } from '../../facts/record-facts.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { holdModel, outputModel } from './bank-model.ts';
import { warmUpModel } from './basin-heat.ts';
import { basinModel } from './basin-model.ts';

export function heatModels(view: JobView): readonly Model[] {
  const ids = view.all('basins').map((record) => record.id);
  const isSpa = (id: string): boolean => {
    const use = recordFacts('basins', view.record('basins', id)).at('use').fact;
    return use.state === 'word' && use.value === 'spa';
  };
  return [
    outputModel(new SurveyReader(view)),
    holdModel(view, isSpa),
    ...ids.map((id) => basinModel(new SurveyReader(view), id)),
    ...ids.map((id) => warmUpModel(new SurveyReader(view), id)),
  ];
}
