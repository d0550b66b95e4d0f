/** Every record of a job, by its collection. */
import { amendment } from './amendment.ts';
import { basin } from './basin.ts';
import { bonding, circuit } from './circuit.ts';
import { filter, pump, pumpSpeed, waterLoop, waterRun } from './circulation.ts';
import { climateMonth } from './climate-month.ts';
import { gasAppliance, gasRegulator, gasSegment } from './gas-piping.ts';
import { gasSupply } from './gas-supply.ts';
import { heater } from './heater.ts';
import { job } from './job.ts';
import { lift } from './lift.ts';
import type { RecordSpec } from './record.ts';
import { site } from './site.ts';
import { planObject, spot } from './surroundings.ts';
import { firingTest, flueTest, waterTest } from './tests.ts';
import { variant, variantChange } from './variant.ts';

export const RECORDS: readonly RecordSpec[] = [
  job,
  site,
  climateMonth,
  basin,
  heater,
  gasSupply,
  gasSegment,
  gasRegulator,
  gasAppliance,
  pump,
  pumpSpeed,
  filter,
  waterRun,
  waterLoop,
  spot,
  planObject,
  circuit,
  bonding,
  waterTest,
  firingTest,
  flueTest,
  lift,
  amendment,
  variant,
  variantChange,
];

export const RECORD_BY_COLLECTION: ReadonlyMap<string, RecordSpec> = new Map(
  RECORDS.map((spec) => [spec.collection, spec]),
);
