/** The models of the place line: where each heater stands, and what is around it. */
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { planOf } from './plan.ts';
import { PLAN, planModel } from './plan-model.ts';
import { readingsModel } from './readings-model.ts';
import { soundModel } from './sound-model.ts';
import { siteOf, sourcesOf } from './sources.ts';
import { windModel } from './wind-model.ts';

const READINGS = 'place.readings.';
/** Facts that nobody measures: without a plan they are not asked. */
const ON_A_PLAN_ONLY = ['on-walkway', 'connections-angle', 'connections-way'] as const;

export function placeModels(view: JobView): readonly Model[] {
  return plannedHeaters(view).flatMap((heater) => {
    const site = siteOf(view, heater);
    const sources = sourcesOf(site);
    const plan = planOf(site);
    const drawn = plan === undefined ? undefined : planModel(plan, sources);
    for (const name of ON_A_PLAN_ONLY) {
      const fact: FactKey = `heater/${heater}/${name}`;
      if (!drawn?.provides.includes(fact)) sources.set(fact, 'not-applicable');
    }
    const readings = readingsModel(view, `${READINGS}${heater}`, sources);
    return [readings, ...(drawn === undefined ? [] : [drawn]), windModel(site), soundModel(site, plan)];
  });
}

/** Models of all lines, less those that only wait for a reading which the plan stands in for. */
export function drawnFirst(models: readonly Model[]): readonly Model[] {
  const drawn = new Set(models.filter(({ id }) => id.startsWith(PLAN)).flatMap(({ provides }) => provides));
  if (drawn.size === 0) return models;
  return models.filter(
    ({ id, provides }) =>
      id.startsWith(PLAN) || provides.length > 1 || !provides.some((fact) => drawn.has(fact)),
  );
}
