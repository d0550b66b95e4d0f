/** Which links of the engine's network a run has become. */
import type { LoopRun } from './runs.ts';
import type { WaterPlan } from './water-plan.ts';

const LINES: Readonly<Record<string, (run: LoopRun) => string>> = {
  suction: (run) => `suction.${run.basin}`,
  'pump-to-filter': () => 'discharge',
  'filter-to-heater': () => 'approach',
  'heater-branch': (run) => `heater.${run.heater}.inlet`,
  bypass: () => 'bypass',
  return: (run) => `returns.${run.basin}`,
};

/** Ids by run, of those that have a place: a branch of a heater that leaves, or a bypass that is none, has none. */
export function linksByRun(plan: WaterPlan): ReadonlyMap<string, readonly string[]> {
  const places = new Map<string, number>();
  const links = new Map<string, readonly string[]>();
  for (const run of plan.runs) {
    const line = LINES[run.role]?.(run);
    if (line === undefined) links.set(run.id, headerLinks(plan, run));
    else {
      const place = places.get(line) ?? 0;
      places.set(line, place + 1);
      links.set(run.id, isPlaced(plan, run) ? [`${line}.${place}`] : []);
    }
  }
  return links;
}

function isPlaced({ heaters, bypass }: WaterPlan, run: LoopRun): boolean {
  if (run.role === 'heater-branch') return heaters.includes(run.heater);
  return run.role !== 'bypass' || bypass;
}

/** A section of a header, or all of them where one that was read stands for all. */
function headerLinks({ heaters, runs }: WaterPlan, run: LoopRun): string[] {
  const between = Math.max(heaters.length - 1, 0);
  const sections = runs.filter((one) => one.role === run.role);
  const places = Array.from({ length: between }, (_, i) => i + 1);
  const own = sections.length === 1 ? places : places.filter((place) => sections[place - 1] === run);
  return own.map((place) => `${run.role}.${place}.0`);
}
