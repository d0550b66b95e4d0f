/**
 * The gas system by physical law: what a gauge at the heater shows with everything off, the heater alone, and
 * everything on. The path a reading of the technician is held against; the code's equation is another model.
 */
import { fail, gas, ok, Recorder, type Result, type Step } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import type { Model, Output, Run, Values } from '../model.ts';
import {
  GAS_STATES,
  type GasLayout,
  type GasState,
  gasSystemSpec,
  namedIssues,
  takeRegulator,
  takeSupply,
} from './physical-system.ts';

export function gasPhysicalModel(reader: SurveyReader, { plan, pipes }: Omit<GasLayout, 'metered'>): Model {
  const layout = { plan, pipes, metered: takeSupply(reader, plan) };
  for (const regulator of plan.regulators) takeRegulator(reader, regulator.id);
  const heaters = plan.loads.filter((load) => load.kind === 'heater').map((load) => load.id);
  const provides = heaters.flatMap((id) =>
    (Object.keys(GAS_STATES) as GasState[]).map((name): FactKey => `heater/${id}/inlet-pressure-${name}`),
  );
  return {
    id: 'gas.physical',
    provides,
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => run(layout, heaters, values),
    explain: (fact, values) => explain(layout, fact, values),
  };
}

function run(layout: GasLayout, heaters: readonly string[], values: Values): Run {
  const system = gas.compileGasSystem(gasSystemSpec(layout, values));
  if (!system.ok) return { ok: false, issues: namedIssues(system.issues, layout) };
  const outputs: Output[] = [];
  for (const name of Object.keys(GAS_STATES) as GasState[]) {
    const solved = name === 'heater-alone' ? undefined : system.value.solve(GAS_STATES[name]());
    for (const id of heaters) {
      const one = solved ?? system.value.solve(GAS_STATES['heater-alone'](id));
      if (!one.ok) return { ok: false, issues: namedIssues(one.issues, layout) };
      const value = one.value.pressureAtLoad(`heater ${id}`);
      outputs.push({ fact: `heater/${id}/inlet-pressure-${name}`, value, kind: 'pressure' });
    }
  }
  return { ok: true, outputs };
}

/** Every link from the regulator to the heater by its own law; what the street has is only taken to be enough. */
function explain(layout: GasLayout, fact: FactKey, values: Values): readonly Step[] {
  const [, id = '', name = ''] = fact.split('/');
  const caseName = name.replace('inlet-pressure-', '') as GasState;
  const solved = solvedCase(layout, { caseName, heater: id }, values);
  const node = layout.plan.loads.find((load) => load.id === id)?.node;
  if (!solved.ok || node === undefined) return [];
  const recorder = new Recorder();
  gas.explainPressure(solved.value, node, recorder);
  return recorder.steps.filter((step) => step.id !== 'gas.supply-pressure');
}

function solvedCase(
  layout: GasLayout,
  { caseName, heater }: { caseName: GasState; heater: string },
  values: Values,
): Result<gas.GasSolution> {
  const system = gas.compileGasSystem(gasSystemSpec(layout, values));
  if (!system.ok) return fail(...system.issues);
  const solved = system.value.solve(GAS_STATES[caseName](heater));
  return solved.ok ? ok(solved.value) : solved;
}
