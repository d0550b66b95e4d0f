/** Facts that are readings as they stand: which fact is which field. */
import type { Fact, FactName, Scope } from '@firstfire/reference';
import type { Book, FactKey } from './book.ts';
import { fieldFact } from './field-fact.ts';
import { type JobView, readingPath } from './view.ts';

type DirectFacts = Readonly<Partial<Record<FactName, string>>>;

/** By the collection whose records are the subjects of a scope: fact → field. */
const DIRECT: readonly { readonly collection: string; readonly scope: Scope; readonly facts: DirectFacts }[] =
  [
    {
      collection: 'site',
      scope: 'site',
      facts: { 'site.altitude': 'altitude' },
    },
    {
      collection: 'site',
      scope: 'job',
      facts: { 'job.single-family': 'singleFamily' },
    },
    {
      collection: 'gasSupply',
      scope: 'job',
      facts: {
        'job.fuel': 'fuel',
        'job.test-pressure': 'testPressure',
        'job.test-duration': 'testDuration',
        'job.test-gauge-range': 'testGaugeRange',
      },
    },
    {
      collection: 'heaters',
      scope: 'heater',
      facts: {
        'heater.volts': 'volts',
        'heater.amperes': 'amperes',
        'heater.fuel': 'fuel',
        'heater.inlet-pressure-minimum': 'inletLeast',
        'heater.inlet-pressure-maximum': 'inletGreatest',
        'heater.altitude-maximum': 'altitudeGreatest',
        'heater.shut-off-distance': 'shutOffDistance',
        'heater.sediment-trap': 'sedimentTrap',
        'heater.header': 'header',
        'heater.rise-greatest': 'riseGreatest',
        'heater.inlet-water-least': 'inletWaterLeast',
        'heater.water-pressure-greatest': 'pressureGreatest',
        'heater.switch-setting': 'switchSetting',
      },
    },
    {
      collection: 'basins',
      scope: 'basin',
      facts: {
        'basin.set-temperature': 'setTemperature',
        'basin.warm-up-time-wanted': 'warmUpTime',
        'basin.turnover-wanted': 'turnover',
      },
    },
    {
      collection: 'waterLoop',
      scope: 'job',
      facts: { 'job.bypass-opening': 'bypassOpening', 'job.check-valve': 'checkValve' },
    },
    {
      collection: 'waterRuns',
      scope: 'run',
      facts: { 'run.role': 'role' },
    },
    {
      collection: 'filters',
      scope: 'filter',
      facts: {
        'filter.area': 'area',
        'filter.rate-greatest': 'rateGreatest',
        'filter.dirty-rise': 'dirtyRise',
      },
    },
    {
      collection: 'gasRegulators',
      scope: 'regulator',
      facts: { 'regulator.capacity': 'capacity' },
    },
  ];

/** Writes every direct fact of a job into the book. */
export function addDirectFacts(book: Book, view: JobView): void {
  for (const { collection, scope, facts } of DIRECT) {
    const single = scope === 'job' || scope === 'site';
    const ids = single ? ['-'] : view.all(collection).map((record) => record.id);
    for (const id of ids) {
      for (const [name, field] of Object.entries(facts)) {
        const shortName = name.slice(scope.length + 1);
        book.set(`${scope}/${id}/${shortName}`, directFact(view, { collection, id, field: String(field) }));
      }
    }
  }
}

/** The reading behind a direct fact, if it is one. */
export function directReading(key: FactKey): FieldOfRecord | undefined {
  const [scope = '', id = '', name = ''] = key.split('/');
  for (const { collection, scope: of, facts } of DIRECT) {
    const field = of === scope ? facts[`${of}.${name}`] : undefined;
    if (field !== undefined) return { collection, id, field };
  }
  return undefined;
}

export interface FieldOfRecord {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
}

function directFact(view: JobView, { collection, id, field }: FieldOfRecord): Fact {
  const path = readingPath(collection, id, field);
  const fact = fieldFact(collection, field, view.record(collection, id).reading(field));
  if (fact.state === 'number') {
    const { value, kind, plusMinus, assumed } = fact;
    return { state: 'number', value, kind, plusMinus, ...(assumed ? { assumed: [path] } : {}) };
  }
  if (fact.state === 'word') {
    return { state: 'word', value: fact.value, ...(fact.assumed ? { assumed: [path] } : {}) };
  }
  return { state: 'unknown', missing: [path] };
}
