/** What whoever finds an immediate hazard owes people first, before anything is mended. */
import type { Source } from '@firstfire/engine';
import type { Hazard } from '../../evaluate/index.ts';

export interface Duty {
  readonly hazard: Hazard;
  /** The country whose habit or law it is; `any` where none is known. */
  readonly country: string;
  /** A phrase of `words`. */
  readonly phrase: string;
  readonly source: Source;
}

const PRACTICE = 'common practice, no source';

export const DUTIES: readonly Duty[] = [
  {
    hazard: 'gas',
    country: 'US',
    phrase: 'duty.gas-us',
    source: {
      document: 'common practice',
      at: 'after the annexes of NFPA 54 and the fuel gas code on the inspection of appliances in use',
      known: PRACTICE,
    },
  },
  {
    hazard: 'gas',
    country: 'CA',
    phrase: 'duty.gas-ca',
    source: {
      document: 'CSA B149.1 and the gas regulations of the provinces',
      at: 'immediate hazard, warning tag and notice to the supplier; sections not recalled',
      known: 'from memory',
    },
  },
  {
    hazard: 'gas',
    country: 'any',
    phrase: 'duty.gas',
    source: { document: 'common practice', known: PRACTICE },
  },
  {
    hazard: 'electricity',
    country: 'any',
    phrase: 'duty.electricity',
    source: { document: 'common practice', known: PRACTICE },
  },
];

/** The duty of a hazard in a country, or what holds anywhere. */
export function dutyOf(hazard: Hazard, country: string): Duty | undefined {
  const of = DUTIES.filter((duty) => duty.hazard === hazard);
  return of.find((duty) => duty.country === country) ?? of.find((duty) => duty.country === 'any');
}
