/** Permits, licences and duties: who may do which work, and what is owed first where something is dangerous. */
import type { AnyRule } from '../../evaluate/index.ts';
import { electricalLicence, gasLicence } from './licences.ts';
import { buildingPermit, electricalPermit, gasPermit } from './permits.ts';

export { DUTIES, type Duty, dutyOf } from './duties.ts';
export { LICENCES, type Licence, WORKS, type Work } from './law.ts';

export const PERMIT_RULES: readonly AnyRule[] = [
  gasPermit,
  gasLicence,
  electricalPermit,
  electricalLicence,
  buildingPermit,
];
