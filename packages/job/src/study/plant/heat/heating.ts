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
  const wanted = named.split(/\s+/).filter((id) => id !== '');
  const ids = wanted.length === 0 ? all : all.filter((id) => wanted.includes(id));
  if (basin !== undefined) refuseStrangers(reader, { basin, wanted });
  if (ids.length === 0) reader.missing.push(noHeater(reader, all));
  return ids.map((id) => takeBurner(reader, id));
}

/** Names that no heater of the job bears. */
function refuseStrangers(
  reader: SurveyReader,
  { basin, wanted }: { readonly basin: string; readonly wanted: readonly string[] },
): void {
  const there = reader.view.all('heaters').map((record) => record.id);
  const strange = wanted.filter((id) => !there.includes(id));
  if (strange.length === 0) return;
  const where = { collection: 'basins', id: basin, field: 'heatedBy' };
  reader.refuse(where, { found: strange.join(' '), expected: there });
}

/** What nobody has said, where nothing heats: which heater stays, or what there is at all. */
function noHeater({ view }: SurveyReader, planned: readonly string[]): ReadingPath {
  const [leaving] = view.all('heaters');
  if (leaving === undefined || planned.length > 0) return readingPath('heaters', planned[0] ?? 'h1', 'input');
  return readingPath('heaters', leaving.id, 'planned');
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
