/**
 * Temperature of the water into a heater's exchanger while the coldest basin it warms is still cold: that water, mixed
 * with what the heater sends round again inside. Nothing goes round where nobody says so.
 */
import { evaluate, fail, ok, Recorder, type Result, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import { heatOutput, takeBurner } from '../heat/heating.ts';
import type { Model, Output, Values } from '../model.ts';
import { greatestFlow } from './greatest-part.ts';
import { heatersOf } from './loop-states.ts';
import { type Part, part } from './part.ts';
import { takeStates } from './readings.ts';
import type { LoopAt } from './water-loop.ts';
import type { WaterPlan } from './water-plan.ts';

/** Nothing sent round: the coldest the exchanger can see. */
const NOTHING_ROUND = { value: 0, kind: 'ratio' } as const;

function factOf(heater: string): FactKey {
  return `heater/${heater}/exchanger-inlet`;
}

/** Takes the start temperature of every basin that the heater warms; the coldest of them. */
function takeStart(reader: SurveyReader, heater: string): (values: Values, recorder?: Recorder) => number {
  const ids = reader.view
    .all('basins')
    .map(({ id }) => id)
    .filter((id) => heatersOf(reader.view, id).includes(heater));
  for (const id of ids.length > 0 ? ids : ['-']) {
    reader.number({ collection: 'basins', id, field: 'startTemperature' });
  }
  const readings = ids.map((id) => readingPath('basins', id, 'startTemperature'));
  const coldest = (values: Values): ReadingPath | undefined =>
    readings.find((reading) => values(reading) === Math.min(...readings.map(values)));
  return (values, recorder) => {
    const reading = coldest(values);
    const value = reading === undefined ? Number.NaN : values(reading);
    if (reading !== undefined)
      recorder?.given({ id: 'water.coldest-start', value, kind: 'temperature', reading });
    return value;
  };
}

function takeRound(reader: SurveyReader, id: string): (values: Values) => number {
  reader.numberOrUsual({ collection: 'heaters', id, field: 'innerBypass' }, NOTHING_ROUND);
  return (values) => values(readingPath('heaters', id, 'innerBypass'));
}

/** A heater that mixes nothing sees the water as it comes, whatever its flow. */
export function plainInletModel(reader: SurveyReader, heater: string): Model {
  const start = takeStart(reader, heater);
  takeRound(reader, heater);
  const fact = factOf(heater);
  return {
    id: `water.inlet.${heater}`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => ({ ok: true, outputs: [{ fact, value: start(values), kind: 'temperature' }] }),
    explain: (_fact, values) => {
      const recorder = new Recorder();
      start(values, recorder);
      return recorder.steps;
    },
  };
}

/** One that sends water round lifts its inlet, least where the flow is greatest and the rise smallest. */
export function mixedInletPart(view: JobView, plan: WaterPlan, heater: string): Part {
  const fact = factOf(heater);
  const place = plan.heaters.indexOf(heater);
  return part(view, (reader) => {
    takeStates(reader, plan, plan.states.all);
    const start = takeStart(reader, heater);
    const round = takeRound(reader, heater);
    const burner = takeBurner(reader, heater);
    const inlet = (at: LoopAt, values: Values, recorder?: Recorder): Result<number> => {
      const greatest = greatestFlow(at, values, ({ heaters }) => heaters[place]?.flow ?? Number.NaN);
      if (!greatest.ok) return greatest;
      const heat = heatOutput([burner], values, recorder);
      if (!heat.ok) return heat;
      const { density, specificHeat } = at.pad.water;
      const carried = { heat: heat.value, flow: greatest.value.flow, density, specificHeat };
      const rise = evaluate(water.temperatureRise, carried, recorder);
      const mixed = rise.ok
        ? evaluate(
            water.exchangerInlet,
            { waterTemperature: start(values, recorder), rise: rise.value, recirculation: round(values) },
            recorder,
          )
        : rise;
      return mixed.ok
        ? mixed
        : fail(...mixed.issues.map((one) => ({ ...one, where: `heaters/${heater}/innerBypass` })));
    };
    return {
      provides: [fact],
      run: (at, values): Result<readonly Output[]> => {
        const found = inlet(at, values);
        return found.ok ? ok([{ fact, value: found.value, kind: 'temperature' }]) : found;
      },
      explain: (_fact, at, values) => {
        const recorder = new Recorder();
        inlet(at, values, recorder);
        return recorder.steps;
      },
    };
  });
}
