/** What a basin measures: surface and volume, from its shape or its known volume. */
import { Recorder } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import type { Model } from '../model.ts';
import { type BasinShape, measureBasin, takeShape } from './basin-shape.ts';

export function basinModel(reader: SurveyReader, id: string): Model {
  const shape = takeShape(reader, id);
  const key = (name: string): FactKey => `basin/${id}/${name}`;
  return {
    id: `heat.basin.${id}`,
    provides: [key('area'), key('volume')],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const measured = measureBasin(shape, values);
      if (!measured.ok)
        return {
          ok: false,
          issues: measured.issues.map((one) => ({ ...one, where: `basins/${id}/${one.where}` })),
        };
      const { area, volume } = measured.value;
      return {
        ok: true,
        outputs: [
          { fact: key('area'), value: area, kind: 'area' },
          { fact: key('volume'), value: volume, kind: 'volume' },
        ],
      };
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      recordMeasures(recorder, shape, measureBasin(shape, values));
      return recorder.steps;
    },
  };
}

/** The measures a basin came out with, for the working of whatever stands on them. */
export function recordMeasures(
  recorder: Recorder,
  { id, shape }: BasinShape,
  measured: ReturnType<typeof measureBasin>,
): void {
  if (!measured.ok) return;
  const { area, volume, meanDepth } = measured.value;
  recorder.open();
  recorder.given({ id: 'heat.shape', value: shape, reading: `basins/${id}/shape` });
  recorder.given({ id: 'heat.mean-depth', value: meanDepth, kind: 'length' });
  recorder.given({ id: 'heat.volume', value: volume, kind: 'volume' });
  recorder.closeGroup({ id: 'heat.basin-area', value: area, kind: 'area', about: { basin: id } });
}
