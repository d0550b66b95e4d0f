/** The water loop as read: its plan, its values, and which readings each part still lacks. */
import { SurveyReader } from '../facts/survey-reader.ts';
import type { JobView, ReadingPath } from '../facts/view.ts';
import { type Burner, takeBurner } from '../plant/heat/heating.ts';
import { ownValuesOf, type Values } from '../plant/model.ts';
import { bypassPart } from '../plant/water/bypass-part.ts';
import { FILTER_STATES } from '../plant/water/loop-states.ts';
import type { Part } from '../plant/water/part.ts';
import { takeDirt, takeStates } from '../plant/water/readings.ts';
import { switchPart } from '../plant/water/switch-part.ts';
import { type StateAsked, WaterLoop } from '../plant/water/water-loop.ts';
import { type WaterPlan, waterPlan } from '../plant/water/water-plan.ts';

export interface StateRead {
  readonly asked: StateAsked;
  readonly reader: SurveyReader;
}

export interface WaterSurveyed {
  readonly view: JobView;
  readonly plan: WaterPlan;
  /** What every flow depends on. */
  readonly reader: SurveyReader;
  readonly loop: WaterLoop;
  readonly states: readonly StateRead[];
  readonly burners: ReadonlyMap<string, { readonly burner: Burner; readonly reader: SurveyReader }>;
  readonly bypass: Part | undefined;
  readonly switches: ReadonlyMap<string, Part>;
  readonly values: Values;
}

const kept = new WeakMap<JobView, WaterSurveyed>();

/** The loop of a job, read once: picture and curves both ask for it. */
export function waterSurveyed(view: JobView): WaterSurveyed {
  const known = kept.get(view) ?? surveyed(view);
  kept.set(view, known);
  return known;
}

function surveyed(view: JobView): WaterSurveyed {
  const reader = new SurveyReader(view);
  const plan = waterPlan(reader);
  const loop = new WaterLoop(plan, reader.parameters);
  const states = plan.states.all.flatMap((state) =>
    FILTER_STATES.map((filter) => stateRead(view, plan, { ...state, filter })),
  );
  const burners = new Map(plan.heaters.map((id) => [id, burnerRead(view, id)]));
  const bypass = plan.bypass ? bypassPart(view, plan) : undefined;
  const switches = new Map(plan.heaters.map((id) => [id, switchPart(view, plan, id)]));
  const readers = [
    reader,
    ...states.map((one) => one.reader),
    ...[...burners.values()].map((one) => one.reader),
    ...(bypass === undefined ? [] : [bypass.reader]),
    ...[...switches.values()].map((one) => one.reader),
  ];
  const values = ownValuesOf(readers.flatMap((one) => one.parameters));
  return { view, plan, reader, loop, states, burners, bypass, switches, values };
}

function stateRead(view: JobView, plan: WaterPlan, asked: StateAsked): StateRead {
  const reader = new SurveyReader(view);
  takeStates(reader, plan, [asked]);
  takeDirt(reader, plan, asked.filter);
  return { asked, reader };
}

function burnerRead(view: JobView, id: string): { burner: Burner; reader: SurveyReader } {
  const reader = new SurveyReader(view);
  return { burner: takeBurner(reader, id), reader };
}

/** Readings a reader lacks, missing or wrong. */
export function lackedBy(...readers: readonly SurveyReader[]): readonly ReadingPath[] {
  return [
    ...new Set(
      readers.flatMap(({ missing, wrong }) => [...missing, ...wrong.map((one) => one.where as ReadingPath)]),
    ),
  ];
}

/** Those of a list that stand in a record; of its own fields alone where some are named. */
export function lacksOf(
  lacked: readonly ReadingPath[],
  record: string,
  fields?: readonly string[],
): readonly ReadingPath[] {
  return lacked.filter((path) => {
    if (!path.startsWith(`${record}/`)) return false;
    return fields === undefined || fields.includes(path.slice(record.length + 1));
  });
}
