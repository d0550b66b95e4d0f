/** The heat that the heaters of a basin put into its water. */
import { ok, type Recorder, type Result } from '@firstfire/engine';
import { plannedHeaters } from '../../facts/heaters.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import { type HeaterInput, takeHeaterInput } from '../gas/altitude-model.ts';
import type { Values } from '../model.ts';

/** Gross efficiency where the nameplate gives none. Common practice, no source. */
const USUAL_EFFICIENCY = { value: 0.8, kind: 'ratio' } as const;

export interface Burner {
  readonly id: string;
  readonly input: HeaterInput;
  readonly efficiency: ReadingPath;
}

/** Takes the heaters that warm a basin: those it names, or all of them. */
export function takeHeating(reader: SurveyReader, basin: string | undefined): readonly Burner[] {
  const all = plannedHeaters(reader.view);
  const named =
    basin === undefined ? '' : reader.wordOr({ collection: 'basins', id: basin, field: 'heatedBy' }, '');
  const ids = named === '' ? all : all.filter((id) => named.split(/\s+/).includes(id));
  if (ids.length === 0) reader.number({ collection: 'heaters', id: 'h1', field: 'input' });
  return ids.map((id) => takeBurner(reader, id));
}

/** What one heater's heat follows from. */
export function takeBurner(reader: SurveyReader, id: string): Burner {
  reader.numberOrUsual({ collection: 'heaters', id, field: 'efficiency' }, USUAL_EFFICIENCY);
  return { id, input: takeHeaterInput(reader, id), efficiency: readingPath('heaters', id, 'efficiency') };
}

/** Sum of input times efficiency, W. */
export function heatOutput(burners: readonly Burner[], values: Values, recorder?: Recorder): Result<number> {
  let sum = 0;
  for (const { id, input, efficiency } of burners) {
    recorder?.open();
    const found = input(values, recorder);
    if (!found.ok) return found;
    const share = values(efficiency);
    recorder?.given({ id: 'reading', value: share, kind: 'ratio', reading: efficiency });
    recorder?.closeGroup({
      id: 'heat.output',
      value: found.value * share,
      kind: 'heat-rate',
      about: { heater: id },
    });
    sum += found.value * share;
  }
  return ok(sum);
}
