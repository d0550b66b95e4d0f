/**
 * The least and the greatest input of a heater on its own natural-draught vent: by the code's table where it reaches,
 * carried on from its edge where it does not.
 */
import { air, type Issue, ok, Recorder, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model, Output, Run, Values } from '../model.ts';
import type { HeaterSpot } from './spot.ts';
import { takeVent, type VentPlan } from './vent-plan.ts';

/** How far the code's table reaches this vent. */
type Reach = 'table' | 'beyond' | 'not allowed';

interface Capacity {
  readonly most: number;
  readonly reach: Reach;
}

export function ventModel(view: JobView, at: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  const vent = takeVent(reader, at);
  const key = (name: string): FactKey => `heater/${at.heater}/${name}`;
  const provides = [key('vent-most'), key('vent-least'), key('vent-reach')];
  return {
    id: `air.vent.${at.heater}`,
    provides,
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values): Run => {
      const found = greatest(vent, values);
      if (!found.ok) return found;
      const { most, reach } = found.value;
      const least = leastOutput(vent, values, key('vent-least'));
      return {
        ok: true,
        outputs: [
          { fact: key('vent-most'), value: most, kind: 'heat-rate' },
          { fact: key('vent-reach'), word: reach },
          least.output,
        ],
        issues: least.issues,
      };
    },
    explain: (fact, values) => {
      const recorder = new Recorder();
      if (fact === key('vent-least')) leastOf(vent, values, recorder);
      else greatest(vent, values, recorder);
      return recorder.steps;
    },
  };
}

const NONE: Capacity = { most: 0, reach: 'not allowed' };

function greatest(vent: VentPlan, values: Values, recorder?: Recorder): Result<Capacity> {
  const { kind } = vent;
  if (kind === undefined) return ok(NONE);
  const point = vent.point(values);
  const table = catalog.air.ventTables(kind, point.diameter).most;
  const printed = air.ventTableCapacity(table, point, recorder);
  if (air.notAllowed(printed)) return ok(NONE);
  if (printed.ok) return ok({ most: printed.value * vent.elbows(recorder), reach: 'table' });
  const relation = (at: air.VentPoint) => air.chimneyCapacity(air.tableChimney(kind, at));
  const carried = air.beyondTable(table, point, { relation, ...(recorder ? { recorder } : {}) });
  if (air.notAllowed(carried)) return ok(NONE);
  return carried.ok ? ok({ most: carried.value * vent.elbows(recorder), reach: 'beyond' }) : carried;
}

/** The table's least input; none for natural draught. */
function leastOf({ kind, point }: VentPlan, values: Values, recorder?: Recorder): Result<number> | undefined {
  if (kind === undefined) return undefined;
  const at = point(values);
  const table = catalog.air.ventTables(kind, at.diameter).least;
  return table === undefined ? undefined : air.ventTableCapacity(table, at, recorder);
}

function leastOutput(
  vent: VentPlan,
  values: Values,
  fact: FactKey,
): { readonly output: Output; readonly issues: readonly Issue[] } {
  const found = leastOf(vent, values);
  if (found === undefined || air.notAllowed(found))
    return { output: { fact, notApplicable: true }, issues: [] };
  if (found.ok) return { output: { fact, value: found.value, kind: 'heat-rate' }, issues: [] };
  // Beyond the table nobody says how small a fire keeps the vent dry.
  return { output: { fact, unknown: [vent.read('ventHeight')] }, issues: [] };
}
