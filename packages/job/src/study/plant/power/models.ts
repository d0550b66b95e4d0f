/** The models of the power line: the circuit that feeds each heater. */
import { evaluate, fail, type Issue, ok, power, Recorder, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { passedOn } from '../passed-on.ts';

/** Fact → field of the circuit, passed on as read. */
const PASSED: Readonly<Record<string, string>> = {
  'volts-idle': 'voltsIdle',
  'volts-running': 'voltsRunning',
  breaker: 'breaker',
  gfci: 'gfci',
  'disconnect-in-sight': 'disconnectInSight',
  bonded: 'bonded',
  selector: 'selector',
};

/** Air around a conduit outdoors where nobody measured it, K (40 °C). Common practice, no source. */
const USUAL_AMBIENT = { value: 313.15, kind: 'temperature' } as const;
/** Insulation of common wire, K; terminals of small equipment bear no more. Common practice, no source. */
const INSULATION = 333.15;
const TWO_WIRES = 2;

export function powerModels(view: JobView): readonly Model[] {
  return plannedHeaters(view).flatMap((heater) => {
    const circuit = circuitOf(view, heater);
    const passed = Object.entries(PASSED).map(([name, field]) =>
      passedOn(view, `heater/${heater}/${name}`, { collection: 'circuits', id: circuit, field }),
    );
    return [
      ...passed,
      wireModel(new SurveyReader(view), heater, circuit),
      dropModel(new SurveyReader(view), heater, circuit),
    ];
  });
}

/** Id of the circuit that names the heater; the only circuit of the only heater; else one that has yet to be surveyed. */
function circuitOf(view: JobView, heater: string): string {
  const circuits = view.all('circuits');
  const named = circuits.find((one) => one.reading('heater')?.value === heater);
  if (named !== undefined) return named.id;
  const [first, ...more] = circuits;
  return first !== undefined && more.length === 0 && first.reading('heater') === undefined
    ? first.id
    : `of-${heater}`;
}

/** What the wire may carry where it runs, and the largest breaker that protects it. */
function wireModel(reader: SurveyReader, heater: string, circuit: string): Model {
  const at = (field: string): Where => ({ collection: 'circuits', id: circuit, field });
  reader.number(at('conductor'));
  reader.numberOrUsual(at('ambient'), USUAL_AMBIENT);
  const carries: FactKey = `heater/${heater}/wire-ampacity`;
  const most: FactKey = `heater/${heater}/breaker-most`;
  const found = (values: Values, recorder?: Recorder): Result<readonly [number, number]> => {
    const copper = conductorAt(circuit, values);
    if (!copper.ok) return copper;
    const tableCurrent = catalog.power.tableAmpacity(copper.value, INSULATION) ?? Number.NaN;
    const ambient = values(readingPath('circuits', circuit, 'ambient'));
    const current = evaluate(
      power.ampacity,
      { tableCurrent, insulation: INSULATION, ambient, conductors: TWO_WIRES },
      recorder,
    );
    return current.ok ? ok([current.value, copper.value.breakerMost ?? current.value]) : current;
  };
  return {
    id: `power.wire.${heater}`,
    provides: [carries, most],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const wire = found(values);
      if (!wire.ok) return wire;
      const [current, breaker] = wire.value;
      return {
        ok: true,
        outputs: [
          { fact: carries, value: current, kind: 'current' },
          { fact: most, value: breaker, kind: 'current' },
        ],
      };
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      found(values, recorder);
      return recorder.steps;
    },
  };
}

/** Share of the voltage lost between panel and heater with the heater running. */
function dropModel(reader: SurveyReader, heater: string, circuit: string): Model {
  const at = (field: string): Where => ({ collection: 'circuits', id: circuit, field });
  for (const field of ['conductor', 'length', 'voltsIdle']) reader.number(at(field));
  reader.number({ collection: 'heaters', id: heater, field: 'amperes' });
  const fact: FactKey = `heater/${heater}/voltage-drop`;
  const drop = (values: Values, recorder?: Recorder): Result<number> => {
    const copper = conductorAt(circuit, values);
    if (!copper.ok) return copper;
    const of = (field: string): number => values(readingPath('circuits', circuit, field));
    const tableResistance = copper.value.resistance * of('length');
    const resistance = evaluate(
      power.conductorResistance,
      { tableResistance, temperature: INSULATION },
      recorder,
    );
    if (!resistance.ok) return resistance;
    const current = values(readingPath('heaters', heater, 'amperes'));
    const lost = evaluate(power.voltageDrop, { current, resistance: resistance.value, phases: 1 }, recorder);
    return lost.ok ? ok(lost.value / of('voltsIdle')) : lost;
  };
  return {
    id: `power.drop.${heater}`,
    provides: [fact],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values) => {
      const found = drop(values);
      if (!found.ok) return found;
      if (!Number.isFinite(found.value)) return fail(noVoltage(circuit));
      return { ok: true, outputs: [{ fact, value: found.value, kind: 'ratio' }] };
    },
    explain: (_fact, values) => {
      const recorder = new Recorder();
      drop(values, recorder);
      return recorder.steps;
    },
  };
}

function noVoltage(circuit: string): Issue {
  return { code: 'no-solution', where: readingPath('circuits', circuit, 'voltsIdle'), reason: 'no-voltage' };
}

function conductorAt(circuit: string, values: Values): Result<catalog.power.CopperConductor> {
  const where = readingPath('circuits', circuit, 'conductor');
  const found = catalog.power.copperOfArea(values(where));
  if (found !== undefined) return ok(found);
  const expected = catalog.power.COPPER.map((one) => `${one.gauge} AWG`);
  return fail({ code: 'not-understood', where, found: values(where), kind: 'wire-size', expected });
}
