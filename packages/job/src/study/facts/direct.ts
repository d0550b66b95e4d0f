/** Facts that are readings as they stand: which fact is which field. */
import type { Fact, FactName, Scope } from '@firstfire/reference';
import type { Book, FactKey } from './book.ts';
import { keyOfParts } from './key.ts';
import { type Known, recordFacts } from './record-facts.ts';
import type { JobView } from './view.ts';

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
      collection: 'job',
      scope: 'job',
      facts: {
        'job.stage': 'stage',
        'job.kind': 'kind',
        'job.permit-gas': 'permitGas',
        'job.permit-electrical': 'permitElectrical',
        'job.permit-building': 'permitBuilding',
        'job.permit-boiler': 'permitBoiler',
        'job.gas-licence': 'gasLicence',
        'job.electrical-licence': 'electricalLicence',
      },
    },
    {
      collection: 'gasSupply',
      scope: 'job',
      facts: {
        'job.fuel': 'fuel',
        'job.test-pressure': 'testPressure',
        'job.test-duration': 'testDuration',
        'job.test-gauge-range': 'testGaugeRange',
        'job.test-gas': 'testGas',
        'job.leaks': 'leaks',
        'job.design-drop': 'designDrop',
        'job.supply-pressure': 'setPressure',
        'job.csst-bonded': 'csstBonded',
        'job.csst-bond-conductor': 'csstBondConductor',
        'job.csst-bond-length': 'csstBondLength',
        'job.purge-way': 'purgeWay',
        'job.purge-inert': 'purgeInert',
        'job.purge-ignition': 'purgeIgnition',
        'job.purge-openings': 'purgeOpenings',
        'job.purge-intake': 'purgeIntake',
        'job.purge-gas': 'purgeGas',
      },
    },
    {
      collection: 'heaters',
      scope: 'heater',
      facts: {
        'heater.volts': 'volts',
        'heater.fuel': 'fuel',
        'heater.efficiency': 'efficiency',
        'heater.input': 'input',
        'heater.venting': 'venting',
        'heater.inlet-pressure-minimum': 'inletLeast',
        'heater.inlet-pressure-maximum': 'inletGreatest',
        'heater.altitude-maximum': 'altitudeGreatest',
        'heater.shut-off-distance': 'shutOffDistance',
        'heater.sediment-trap': 'sedimentTrap',
        'heater.shut-off-accessible': 'shutOffAccessible',
        'heater.gas-union': 'gasUnion',
        'heater.trap-nipple': 'trapNipple',
        'heater.ignition': 'ignition',
        'heater.integrated-efficiency': 'integratedEfficiency',
        'heater.off-switch': 'offSwitch',
        'heater.off-switch-distance': 'offSwitchDistance',
        'heater.relief-stamp': 'reliefStamp',
        'heater.listed': 'listed',
        'heater.controls-barred': 'controlsBarred',
        'heater.exchanger': 'exchanger',
        'heater.yearly-service': 'yearlyService',
        'heater.inner-bypass': 'innerBypass',
        'heater.switch-kind': 'switchKind',
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
        'basin.use': 'use',
        'basin.where': 'where',
        'basin.cover': 'cover',
        'basin.other-heat': 'otherHeat',
        'basin.set-temperature': 'setTemperature',
        'basin.warm-up-time-wanted': 'warmUpTime',
        'basin.turnover-wanted': 'turnover',
      },
    },
    {
      collection: 'waterLoop',
      scope: 'job',
      facts: {
        'job.bypass-opening': 'bypassOpening',
        'job.check-valve': 'checkValve',
        'job.bypass-line': 'bypass',
        'job.feeder': 'feeder',
        'job.timer': 'timer',
        'job.solar-pipe': 'solarPipe',
      },
    },
    {
      collection: 'gasSegments',
      scope: 'laid-segment',
      facts: { 'laid-segment.where': 'where', 'laid-segment.cover': 'cover' },
    },
    {
      collection: 'gasSegments',
      scope: 'plastic-segment',
      facts: {
        'plastic-segment.where': 'where',
        'plastic-segment.risers': 'risers',
        'plastic-segment.tracer': 'tracer',
        'plastic-segment.tracer-size': 'tracerSize',
      },
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

/** The same with the facts' own names, as keys have them. */
const LISTED = DIRECT.map(({ collection, scope, facts }) => ({
  collection,
  scope,
  single: scope === 'job' || scope === 'site',
  fields: Object.entries(facts).map(([name, field]) => ({
    name: name.slice(scope.length + 1),
    field: String(field),
  })),
}));

/** Writes every direct fact of a job into the book. */
export function addDirectFacts(book: Book, view: JobView): void {
  for (const { collection, scope, single, fields } of LISTED) {
    const records = single ? [view.record(collection, '-')] : view.all(collection);
    for (const record of records) {
      const facts = recordFacts(collection, record);
      for (const { name, field } of fields)
        book.set(keyOfParts(scope, record.id, name), directFact(facts.at(field)));
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

/** What is known of a record is kept with it: the same reading gives the same fact, and the same finding. */
const kept = new WeakMap<Known, Fact>();

function directFact(known: Known): Fact {
  const fact = kept.get(known) ?? factOf(known);
  kept.set(known, fact);
  return fact;
}

function factOf({ path, fact }: Known): Fact {
  if (fact.state === 'number') {
    const { value, kind, plusMinus, assumed } = fact;
    const known = { state: 'number', value, kind, plusMinus } as const;
    return assumed ? { ...known, assumed: [path] } : known;
  }
  if (fact.state === 'word') {
    const { value, assumed } = fact;
    return assumed ? { state: 'word', value, assumed: [path] } : { state: 'word', value };
  }
  return { state: 'unknown', missing: [path] };
}
