/** What everything connected asks of meter, regulators and tank. */
import { gas, Recorder, type Step } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import type { Model, Output, Values } from '../model.ts';
import { fuelOf } from './fuel.ts';
import { type GasPlan, SUPPLY } from './gas-plan.ts';
import { type GasTree, zoneLoads } from './zones.ts';

export function gasLoadModel(reader: SurveyReader, { plan, zones }: GasTree): Model {
  const provides: FactKey[] = [
    'job/-/connected-load',
    'job/-/connected-input',
    ...plan.regulators.map(({ id }): FactKey => `regulator/${id}/load`),
  ];
  return {
    id: 'gas.load',
    provides,
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: zones.ok ? reader.wrong : [...reader.wrong, ...zones.issues],
    run: (values) => (zones.ok ? { ok: true, outputs: outputs(plan, values) } : zones),
    explain: (_fact, values) => loadSteps(plan, values),
  };

  function outputs(system: GasPlan, values: Values): Output[] {
    const fuel = fuelOf(system, values);
    const totals = zones.ok
      ? zoneLoads(zones.value, (load) => gas.flowOfHeat(fuel, values(load.input)))
      : new Map();
    const load = totals.get(SUPPLY) ?? 0;
    return [
      { fact: 'job/-/connected-load', value: load, kind: 'standard-gas-flow' },
      { fact: 'job/-/connected-input', value: gas.heatOfFlow(fuel, load), kind: 'heat-rate' },
      ...system.regulators.map(
        ({ id }): Output => ({
          fact: `regulator/${id}/load`,
          value: totals.get(id) ?? 0,
          kind: 'standard-gas-flow',
        }),
      ),
    ];
  }
}

/** Loads by their nameplates, and the flow each asks for. */
export function loadSteps(plan: Pick<GasPlan, 'fuelName' | 'loads'>, values: Values): readonly Step[] {
  const recorder = new Recorder();
  const fuel = fuelOf(plan, values);
  recorder.given({
    id: 'heating-value',
    value: fuel.heatingValue,
    kind: 'heating-value',
    reading: 'gasSupply/-/heatingValue',
  });
  for (const load of plan.loads) {
    recorder.open();
    recorder.given({ id: 'input', value: values(load.input), kind: 'heat-rate', reading: load.input });
    const value = gas.flowOfHeat(fuel, values(load.input));
    recorder.closeGroup({
      id: 'gas.connected-load',
      value,
      kind: 'standard-gas-flow',
      about: { name: load.label },
    });
  }
  return recorder.steps;
}
