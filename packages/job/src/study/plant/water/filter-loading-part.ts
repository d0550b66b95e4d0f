/**
 * How dirty the filter is now: its gauge, read at any speed, turned into the rise it would show at the speed of its
 * clean figure.
 *
 * The pad's own pressures are brought to the gauge by the clean figure: what the drawing has wrong in pump, pipes and
 * heights is taken to act on both readings alike. Read at the speed of the clean figure, the rise is the difference of
 * the two readings and nothing else.
 */
import { fail, ok, Recorder, type Result, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Output, Values } from '../model.ts';
import { type Part, part } from './part.ts';
import { readingOf } from './reading-of.ts';
import type { LoopAt } from './water-loop.ts';
import type { WaterPlan } from './water-plan.ts';

interface Gauges {
  readonly clean: ReadingPath;
  readonly now: ReadingPath;
  readonly speedNow: ReadingPath;
}

export function filterLoadingPart(view: JobView, plan: WaterPlan): Part {
  const { filter } = plan;
  const fact: FactKey = `filter/${filter}/rise-at-clean-speed`;
  const gauges: Gauges = {
    clean: readingPath('filters', filter, 'gaugeClean'),
    now: readingPath('filters', filter, 'gaugeNow'),
    speedNow: readingPath('filters', filter, 'speedNow'),
  };
  return part(view, (reader) => {
    for (const field of ['cleanSpeed', 'gaugeClean', 'gaugeNow', 'speedNow']) {
      reader.number({ collection: 'filters', id: filter, field });
    }
    return {
      provides: [fact],
      run: (at, values): Result<readonly Output[]> => {
        const rise = riseNow({ at, values, gauges });
        return rise.ok ? ok([{ fact, value: rise.value.rise, kind: 'pressure-difference' }]) : rise;
      },
      explain: (_fact, at, values) => {
        const rise = riseNow({ at, values, gauges });
        if (!rise.ok) return [];
        const recorder = new Recorder();
        for (const reading of [gauges.clean, gauges.now]) {
          recorder.given({ id: 'reading', value: values(reading), kind: 'pressure', reading });
        }
        recorder.given({ id: 'water.gauge-over-drawing', value: rise.value.factor, kind: 'ratio' });
        recorder.given({ id: 'water.filter-loading', value: rise.value.loading, kind: 'ratio' });
        return recorder.steps;
      },
    };
  });
}

interface Asked {
  readonly at: LoopAt;
  readonly values: Values;
  readonly gauges: Gauges;
}

interface RiseNow {
  /** At the speed of the clean figure, Pa. */
  readonly rise: number;
  /** Resistance over clean. */
  readonly loading: number;
  /** Clean gauge over what the pad as drawn would show. */
  readonly factor: number;
}

function riseNow({ at, values, gauges }: Asked): Result<RiseNow> {
  const clean = at.cleanState(values);
  const drawn = at.solveClean(values);
  if (!drawn.ok) return drawn;
  const factor = values(gauges.clean) / drawn.value.filterInletPressure;
  if (!(factor > 0) || !Number.isFinite(factor)) {
    return fail({ code: 'contradiction', where: gauges.clean, reason: 'gauge-not-possible' });
  }
  const state = { ...clean, speed: at.speedRatio(gauges.speedNow, values) };
  const pressure = values(gauges.now) / factor;
  const loading = water.loadingOfReading(at.pad, {
    state,
    pressure,
    clean: { ...drawn.value, speed: clean.speed },
  });
  if (!loading.ok) {
    return fail(
      ...loading.issues.map((issue) => ({ ...issue, found: values(gauges.now), where: gauges.now })),
    );
  }
  const dirty = water.solvePad(at.pad, { ...clean, loading: loading.value });
  if (!dirty.ok) return fail(...dirty.issues.map((issue) => readingOf(at.plan, issue)));
  const rise = dirty.value.filterInletPressure - drawn.value.filterInletPressure;
  return ok({ rise: factor * rise, loading: loading.value, factor });
}
