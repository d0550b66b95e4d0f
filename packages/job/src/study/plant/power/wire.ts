/** The wire as it runs: what it may carry, and the largest breaker that protects it. */
import { evaluate, fail, ok, power, type Recorder, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import { type Fed, ofCircuit } from './circuit-of.ts';

/** Air around a conduit outdoors where nobody measured it, K (40 °C). Common practice, no source. */
const USUAL_AMBIENT = { value: 313.15, kind: 'temperature' } as const;
/** A heater’s circuit in a conduit of its own. Common practice, no source. */
const USUAL_IN_RACEWAY = { value: 2, kind: 'ratio' } as const;
/** Insulation of common building wire where it may be wet, °C. Common practice, no source. */
const USUAL_INSULATION = '75';
/** Terminals of small equipment that says nothing else, °C. NEC 110.14(C), from memory. */
const USUAL_TERMINALS = '60';
const FREEZING = 273.15;

type Copper = catalog.power.CopperConductor;

/** What the ampacity of any conductor in this raceway depends on. */
export interface Raceway {
  /** K. */
  readonly insulation: number;
  /** K. */
  readonly terminals: number;
  readonly assumed: readonly ReadingPath[];
}

/** Takes the readings of the raceway, and a usual value, marked as assumed, for each that nobody took. */
export function raceway(reader: SurveyReader, fed: Fed): Raceway {
  reader.numberOrUsual(ofCircuit(fed, 'ambient'), USUAL_AMBIENT);
  reader.numberOrUsual(ofCircuit(fed, 'inRaceway'), USUAL_IN_RACEWAY);
  const assumed: ReadingPath[] = [];
  const rating = (field: string, usual: string): number => {
    const where = ofCircuit(fed, field);
    const fact = reader.fact(where);
    if (fact.state !== 'word' || fact.assumed) {
      assumed.push(readingPath(where.collection, where.id, where.field));
    }
    return Number(fact.state === 'word' ? fact.value : usual) + FREEZING;
  };
  const insulation = rating('insulation', USUAL_INSULATION);
  return { insulation, terminals: rating('terminals', USUAL_TERMINALS), assumed };
}

export interface Wire {
  readonly copper: Copper;
  readonly fed: Fed;
  readonly raceway: Raceway;
}

/** Current the wire may carry, A: by its insulation where it runs, but no more than its terminals bear. */
export function wireCurrent(wire: Wire, values: Values, recorder?: Recorder): Result<number> {
  const { copper, fed } = wire;
  const { insulation, terminals } = wire.raceway;
  const of = (field: string): number => values(readingPath('circuits', fed.circuit, field));
  const input = {
    tableCurrent: catalog.power.tableAmpacity(copper, insulation) ?? Number.NaN,
    insulation,
    ambient: of('ambient'),
    conductors: of('inRaceway'),
  };
  const corrected = evaluate(power.ampacity, input, recorder);
  if (!corrected.ok) return corrected;
  const atTerminals = catalog.power.tableAmpacity(copper, terminals) ?? Number.NaN;
  recorder?.given({ id: 'power.at-terminals', value: atTerminals, kind: 'current' });
  return ok(Math.min(corrected.value, atTerminals));
}

/** Largest breaker ahead of it, A: the next standard size, and no more than a small conductor may have. */
export function breakerMost(wire: Wire, values: Values, recorder?: Recorder): Result<number> {
  const current = wireCurrent(wire, values, recorder);
  if (!current.ok) return current;
  const standard = power.nextStandardSize(current.value, catalog.power.BREAKERS);
  if (!standard.ok) return standard;
  const most = Math.min(standard.value, wire.copper.breakerMost ?? standard.value);
  recorder?.given({ id: 'power.standard-breaker', value: most, kind: 'current' });
  return ok(most);
}

/** The conductor of the circuit; a gauge that the tables do not hold is not understood. */
export function copperOf({ circuit }: Fed, values: Values): Result<Copper> {
  const where = readingPath('circuits', circuit, 'conductor');
  const found = catalog.power.copperOfArea(values(where));
  if (found !== undefined) return ok(found);
  const expected = catalog.power.COPPER_GAUGES;
  return fail({ code: 'not-understood', where, found: values(where), kind: 'wire-size', expected });
}

/** Aluminium is in none of the tables here: it is refused where it is read. */
export function takeCopper(reader: SurveyReader, fed: Fed): void {
  const where = ofCircuit(fed, 'metal');
  const metal = reader.wordOr(where, 'copper');
  if (metal !== 'copper') reader.refuse(where, { found: metal, expected: ['copper'] });
  reader.number(ofCircuit(fed, 'conductor'));
}
