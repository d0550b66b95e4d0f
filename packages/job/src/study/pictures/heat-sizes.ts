/** What heaters of other sizes would do for a basin: the job with that input on their nameplates, asked like the job. */
import { heat, quantity } from '@firstfire/engine';
import type { Reading } from '../../schema/index.ts';
import { SurveyReader } from '../facts/survey-reader.ts';
import type { JobView, RecordView } from '../facts/view.ts';
import { holdLoad, takeWarmUp } from '../plant/heat/basin-heat.ts';
import { ownValuesOf } from '../plant/model.ts';
import type { HeaterSizeShown } from './heat-shown.ts';

/** Inputs usual for pool heaters and for small boilers, kBtu/h. Common practice, no source. */
const USUAL_INPUTS = [75, 100, 150, 200, 250, 300, 350, 400, 500, 650, 750, 1000, 1250, 1500, 2000] as const;
/** As many as are shown, about the one in the plan. */
const SHOWN = 8;
const SMALLER = 4;
/** Where there is none in the plan. */
const MIDDLE = 300;
const KILO_BTU_H = (1000 * quantity.BTU) / quantity.HOUR;

export interface SizesAsked {
  readonly basin: string;
  readonly heaters: readonly string[];
  /** Nameplate input now, W. */
  readonly input: number | undefined;
}

/** Whatever hour it is wanted. */
export type SizeMade = Omit<HeaterSizeShown, 'inTime'>;

/** The usual inputs and the one in the plan, least first, each with what it would do. */
export function heaterSizes(view: JobView, asked: SizesAsked): readonly SizeMade[] {
  const own = asked.input === undefined ? [] : [asked.input];
  const middle = asked.input === undefined ? MIDDLE : asked.input / KILO_BTU_H;
  const above = USUAL_INPUTS.findIndex((size) => size >= middle);
  const centre = above < 0 ? USUAL_INPUTS.length : above;
  const first = Math.max(0, Math.min(centre - SMALLER, USUAL_INPUTS.length - SHOWN));
  const usual = USUAL_INPUTS.slice(first, first + SHOWN).map((size) => size * KILO_BTU_H);
  const others = usual.filter((size) => own.every((one) => Math.abs(one - size) > 0.01 * size));
  return [...own, ...others].sort((a, b) => a - b).flatMap((input) => heaterSize(view, asked, input) ?? []);
}

function heaterSize(view: JobView, asked: SizesAsked, input: number): SizeMade | undefined {
  const same = asked.input !== undefined && input === asked.input;
  const reader = new SurveyReader(same ? view : withInput(view, asked.heaters, input));
  const warming = takeWarmUp(reader, asked.basin);
  if (reader.missing.length > 0 || reader.wrong.length > 0) return undefined;
  const values = ownValuesOf(reader.parameters);
  const question = warming.question(values);
  const hold = holdLoad(warming.basin, values);
  if (!question.ok || !hold.ok) return undefined;
  const top = heat.plateau(question.value);
  if (!top.ok) return undefined;
  const time = timeTo(question.value, top.value);
  return {
    input,
    output: question.value.output,
    time,
    plateau: top.value,
    holds: question.value.output >= hold.value,
  };
}

/** Time (s) until the target; nothing where it is never reached. Water that is warm already needs none. */
export function timeTo(question: heat.WarmUpQuestion, plateau: number): number | undefined {
  if (question.start >= question.target) return 0;
  if (plateau <= question.target || heat.questionIssues(question).length > 0) return undefined;
  const time = heat.warmUpTime(question);
  return Number.isFinite(time) ? time : undefined;
}

/** A heater of another input has another plate: what the old one says for the altitude falls away. */
export function withInput(view: JobView, heaters: readonly string[], input: number): JobView {
  const reading: Reading = { value: input / KILO_BTU_H, unit: 'kBtu/h', how: 'assumed' };
  const over = (record: RecordView): RecordView => ({
    id: record.id,
    reading: (field) => {
      if (field === 'input') return reading;
      return field === 'altitudeInput' ? undefined : record.reading(field);
    },
  });
  const list = view.all('heaters').map((record) => (heaters.includes(record.id) ? over(record) : record));
  return {
    all: (collection) => (collection === 'heaters' ? list : view.all(collection)),
    record: (collection, id) =>
      (collection === 'heaters' ? list.find((one) => one.id === id) : undefined) ??
      view.record(collection, id),
  };
}
