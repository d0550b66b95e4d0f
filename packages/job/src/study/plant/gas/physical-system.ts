/**
 * The gas system by physical law, as a specification for the solver: service regulator, meter, pipes, line regulators
 * and loads, each from its readings. One of these serves findings, working and picture.
 */
import { gas, type Issue, properties } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import { fuelOf } from './fuel.ts';
import { type GasPlan, type PlannedLoad, type PlannedRegulator, SUPPLY } from './gas-plan.ts';
import { type GasPipe, lengthOf } from './pipes.ts';
import { nodeReading } from './zones.ts';

const of = (field: string) => readingPath('gasSupply', '-', field);
const SET = of('setPressure');
const LOCK_UP = of('lockUpPressure');
const CAPACITY = of('regulatorCapacity');
const DROOP = of('regulatorDroop');
const BADGE = of('meterBadge');
const BADGE_DROP = of('meterBadgeDrop');
const ALTITUDE = readingPath('site', '-', 'altitude');

/** Of the gas in pipes in and around a house, K; 10 K move the drop by about 4 %. Common practice, no source. */
const GAS_TEMPERATURE = 288.15;

/** The street or tank stands this many times over the lock-up pressure: the service regulator never runs short. */
const STREET = 5;

/** 1 in w.c.: what a regulator may droop at its capacity, and what it loses wide open. Common practice, no source. */
const USUAL_DROOP = { value: 249.089, kind: 'pressure-difference' } as const;
const USUAL_BADGE_DROP = { value: 124.544, kind: 'pressure-difference' } as const;

const CORRUGATED_TABLES = [catalog.gas.CSST_LOW_PRESSURE, catalog.gas.CSST_TWO_PSI] as const;

/** Which loads run in each of the three states a gas line is judged by. */
export const GAS_STATES = {
  'all-off': () => 'none' as const,
  'heater-alone': (id: string) => [`heater ${id}`] as const,
  'everything-on': () => 'all' as const,
};

export type GasState = keyof typeof GAS_STATES;

export interface GasLayout {
  readonly plan: GasPlan;
  readonly pipes: ReadonlyMap<string, GasPipe>;
  /** Whether the supply has a meter that is known. */
  readonly metered: boolean;
}

/** Takes what the supply needs; whether it has a meter that is known. */
export function takeSupply(reader: SurveyReader, plan: GasPlan): boolean {
  const at = (field: string) => ({ collection: 'gasSupply', id: '-', field });
  reader.number(at('setPressure'));
  reader.number(at('lockUpPressure'));
  reader.numberOrUsual(at('regulatorDroop'), USUAL_DROOP);
  reader.number({ collection: 'site', id: '-', field: 'altitude' });
  const load = plan.loads.length > 0;
  // Without the regulator's own table its droop is taken at a flow of the size of the meter.
  const usual = reader.has(at('meterBadge')) ? reader.number(at('meterBadge')) : 0.008;
  reader.numberOrUsual(at('regulatorCapacity'), { value: usual, kind: 'standard-gas-flow' });
  if (!load || !reader.has(at('meterBadge'))) return false;
  reader.numberOrUsual(at('meterBadgeDrop'), USUAL_BADGE_DROP);
  return true;
}

export function takeRegulator(reader: SurveyReader, id: string): void {
  const at = (field: string) => ({ collection: 'gasRegulators', id, field });
  reader.number(at('lockUpPressure'));
  reader.number(at('capacity'));
  reader.numberOrUsual(at('droop'), USUAL_DROOP);
}

/** Issues of the solver by the readings they are about. */
export function namedIssues(issues: readonly Issue[], layout: GasLayout): Issue[] {
  return issues.map((issue) => ({ ...issue, where: readable(issue.where, layout) }));
}

/** A link of the engine is named after its record; a junction is written where something hangs on it. */
function readable(where: string, { plan }: GasLayout): string {
  const [link = '', field = ''] = where.split('.');
  const [kind, id] = link.split(' ');
  if (kind === 'segment') return `gasSegments/${id}/${field}`;
  if (kind === 'regulator') return `gasRegulators/${id}/${field}`;
  const load = plan.loads.find((one) => one.node === where);
  return load === undefined ? where : nodeReading(load);
}

export function gasSystemSpec({ plan, pipes, metered }: GasLayout, values: Values): gas.GasSystemSpec {
  const fuel = fuelOf(plan, values);
  const atmosphere = properties.standardPressureAt(values(ALTITUDE));
  const outlet = metered ? 'meter' : SUPPLY;
  return {
    fuel,
    ambient: { atmosphere, temperature: GAS_TEMPERATURE },
    supply: { node: 'street', pressure: STREET * values(LOCK_UP) },
    links: [
      serviceRegulator(outlet, values),
      ...(metered ? [meter(values)] : []),
      ...plan.segments.flatMap((segment) => pipe(segment, pipes.get(segment.id), values)),
      ...plan.regulators.map((regulator) => lineRegulator(regulator, values)),
    ],
    loads: plan.loads.map((load) => ({
      id: loadName(load),
      node: load.node,
      flow: gas.flowOfHeat(fuel, values(load.input)),
    })),
  };
}

/** A load by the name the solver knows it by. */
export function loadName({ kind, id }: PlannedLoad): string {
  return kind === 'heater' ? `heater ${id}` : id;
}

function serviceRegulator(to: string, values: Values): gas.GasRegulator {
  const setPressure = values(SET);
  return {
    type: 'regulator',
    id: 'regulator service',
    from: 'street',
    to,
    setPressure,
    lockUpPressure: Math.max(values(LOCK_UP), setPressure),
    droop: values(DROOP),
    capacity: values(CAPACITY),
    wideOpenDrop: setPressure,
  };
}

function meter(values: Values): gas.GasMeter {
  return {
    type: 'meter',
    id: 'meter',
    from: 'meter',
    to: SUPPLY,
    badge: values(BADGE),
    badgeDrop: values(BADGE_DROP),
  };
}

function lineRegulator({ id, from, to, setPressure }: PlannedRegulator, values: Values): gas.GasRegulator {
  const at = (field: string) => values(readingPath('gasRegulators', id, field));
  const set = values(setPressure);
  return {
    type: 'regulator',
    id: `regulator ${id}`,
    from,
    to,
    setPressure: set,
    lockUpPressure: Math.max(at('lockUpPressure'), set),
    droop: at('droop'),
    capacity: at('capacity'),
    wideOpenDrop: USUAL_DROOP.value,
  };
}

function pipe(
  segment: GasPlan['segments'][number],
  made: GasPipe | undefined,
  values: Values,
): gas.GasPipe[] {
  if (made === undefined) return [];
  const carrier = made.carrier(0);
  const bore: gas.GasPipe['bore'] =
    carrier.type === 'bore'
      ? { type: 'bore', insideDiameter: carrier.insideDiameter, roughness: made.roughness }
      : {
          type: 'corrugated',
          ehd: carrier.ehd,
          tables: CORRUGATED_TABLES,
        };
  const { id, from, to } = segment;
  const rise = made.rise === undefined ? {} : { rise: values(made.rise) };
  return [
    {
      type: 'pipe',
      id: `segment ${id}`,
      from,
      to,
      bore,
      length: lengthOf(made, values),
      fittings: made.fittings,
      ...rise,
    },
  ];
}
