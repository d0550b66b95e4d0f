/**
 * The pressure the piping to a heater starts from: what the nearest regulator ahead of it is set to. It is what the
 * drop allowed is counted from, whether the piping is a tree or a loop.
 */
import { Recorder } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { type GasPlan, SUPPLY } from './gas-plan.ts';

const SET = readingPath('gasSupply', '-', 'setPressure');

export function supplyPressureModels(view: JobView, plan: GasPlan): readonly Model[] {
  return plan.loads
    .filter((load) => load.kind === 'heater')
    .map(({ id, node }) => supplyPressureModel(new SurveyReader(view), { id, reading: headOf(plan, node) }));
}

function supplyPressureModel(
  reader: SurveyReader,
  heater: { id: string; reading: ReadingPath | undefined },
): Model {
  const { id, reading } = heater;
  if (reading !== undefined) {
    const [collection = '', record = '', field = ''] = reading.split('/');
    reader.number({ collection, id: record, field });
  }
  const unfed = { code: 'ill-formed', where: `heaters/${id}/node`, reason: 'not-connected' } as const;
  const fact = `heater/${id}/supply-pressure` as const;
  return {
    id: `gas.supply-pressure.${id}`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reading === undefined ? [...reader.wrong, unfed] : reader.wrong,
    run: (values) => ({ ok: true, outputs: [{ fact, value: values(reading ?? SET), kind: 'pressure' }] }),
    explain: (_fact, values) => {
      const recorder = new Recorder();
      const from = reading ?? SET;
      recorder.given({ id: 'reading', value: values(from), kind: 'pressure', reading: from });
      return recorder.steps;
    },
  };
}

/** The set pressure of what feeds the pipes that hang together with a junction; undefined when nothing does. */
function headOf(plan: GasPlan, node: string): ReadingPath | undefined {
  const together = new Set([node]);
  for (const at of together) {
    for (const { from, to } of plan.segments) {
      if (from === at) together.add(to);
      if (to === at) together.add(from);
    }
  }
  const regulator = plan.regulators.find((one) => together.has(one.to));
  if (regulator !== undefined) return regulator.setPressure;
  return together.has(SUPPLY) ? SET : undefined;
}
