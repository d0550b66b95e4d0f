/** Where one stands to take a reading: a survey walks by place, not by line. */
export const STATIONS = ['desk', 'meter', 'indoors', 'panel', 'pad', 'pool', 'spot'] as const;

export type Station = (typeof STATIONS)[number];

const OF_COLLECTION: Readonly<Record<string, Station>> = {
  job: 'desk',
  site: 'desk',
  climateMonths: 'desk',
  amendments: 'desk',
  variants: 'desk',
  variantChanges: 'desk',
  gasSupply: 'meter',
  gasRegulators: 'meter',
  gasSegments: 'indoors',
  gasAppliances: 'indoors',
  circuits: 'panel',
  bonding: 'pool',
  heaters: 'pad',
  pumps: 'pad',
  pumpSpeeds: 'pad',
  filters: 'pad',
  waterRuns: 'pad',
  waterLoop: 'pad',
  waterTests: 'pool',
  flueTests: 'pad',
  basins: 'pool',
  spots: 'spot',
  planObjects: 'spot',
  lifts: 'spot',
};

/** Some readings of a record are taken elsewhere than the rest of it. */
const OF_FIELD: Readonly<Record<string, Station>> = {
  'circuits.voltsIdle': 'pad',
  'circuits.voltsRunning': 'pad',
  'circuits.runningCurrent': 'pad',
  'circuits.startCurrent': 'pad',
  'circuits.selector': 'pad',
  'circuits.controlVolts': 'pad',
  'circuits.runOn': 'pad',
  'circuits.interlocked': 'pad',
  'circuits.localLimit': 'pad',
  'circuits.remote': 'pad',
  'circuits.disconnectInSight': 'pad',
  'basins.setTemperature': 'desk',
  'basins.warmUpTime': 'desk',
};

/** Worked example: `circuits/c1/breaker` stands at the panel, `circuits/c1/voltsIdle` at the pad. */
export function stationOf(path: string): Station {
  const [collection = '', , field = ''] = path.split('/');
  return OF_FIELD[`${collection}.${field}`] ?? OF_COLLECTION[collection] ?? 'desk';
}

/** Minutes a reading takes, about: common practice, no source. */
export function minutesOf(path: string): number {
  const [collection = '', , field = ''] = path.split('/');
  if (/[vV]olts|[cC]urrent|gauge|Pressure$|stack|carbon|oxygen/.test(field)) return 3;
  if (/curve|fittings|corners/.test(field) || collection.endsWith('Tests')) return 4;
  return 0.5;
}
