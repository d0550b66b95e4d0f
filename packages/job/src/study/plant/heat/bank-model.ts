/** All heaters together against all basins together on the design day. */
import { type Issue, Recorder } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { holdLoad, takeBasinHeat } from './basin-heat.ts';
import { heatOutput, takeHeating } from './heating.ts';

const HOLD = 'job/-/hold-load';
const OUTPUT = 'job/-/heat-output';

export function outputModel(reader: SurveyReader): Model {
  const burners = takeHeating(reader, undefined);
  return {
    id: 'heat.output',
    provides: [OUTPUT],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const output = heatOutput(burners, values);
      return output.ok
        ? { ok: true, outputs: [{ fact: OUTPUT, value: output.value, kind: 'heat-rate' }] }
        : output;
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      heatOutput(burners, values, recorder);
      return recorder.steps;
    },
  };
}

/** A spa is heated when it is used, not held: it counts only where it stands alone. */
export function holdModel(view: JobView, isSpa: (id: string) => boolean): Model {
  const reader = new SurveyReader(view);
  const ids = view.all('basins').map((record) => record.id);
  const held = ids.every(isSpa) ? ids : ids.filter((id) => !isSpa(id));
  const basins = held.map((id) => takeBasinHeat(reader, id));
  if (basins.length === 0) reader.word({ collection: 'basins', id: 'pool', field: 'shape' });
  return {
    id: 'heat.hold',
    provides: [HOLD],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      let sum = 0;
      const issues: Issue[] = [];
      for (const basin of basins) {
        const load = holdLoad(basin, values);
        if (load.ok) sum += load.value;
        else issues.push(...load.issues);
      }
      if (issues.length > 0) return { ok: false, issues };
      return { ok: true, outputs: [{ fact: HOLD, value: Math.max(0, sum), kind: 'heat-rate' }] };
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      for (const basin of basins) {
        recorder.open();
        const load = holdLoad(basin, values, recorder);
        const value = load.ok ? load.value : Number.NaN;
        recorder.closeGroup({
          id: 'heat.hold-load',
          value,
          kind: 'heat-rate',
          about: { basin: basin.shape.id },
        });
      }
      return recorder.steps;
    },
  };
}
