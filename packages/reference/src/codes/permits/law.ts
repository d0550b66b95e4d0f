/** Licences and permits by kind of work and place, as far as they were surely recalled. All: check with the authority. */
export const WORKS = ['gas', 'electrical', 'boiler', 'building'] as const;
export type Work = (typeof WORKS)[number];

export interface Licence {
  readonly country: 'US' | 'CA';
  /** State or province; the whole country where it is not named. */
  readonly region?: string;
  readonly work: Work;
  /** Who may do it. */
  readonly who: string;
  /** What is asked for before, and of whom. */
  readonly permit: string;
}

/** Rows that name a region stand beside those of its country. From memory, every one. */
export const LICENCES: readonly Licence[] = [
  {
    country: 'US',
    work: 'gas',
    who: 'set by state or town: plumber, gas fitter or mechanical contractor with a licence',
    permit: 'mechanical, plumbing or gas permit of the building department (IFGC 106)',
  },
  {
    country: 'US',
    work: 'electrical',
    who: 'electrician licensed by state or town',
    permit: 'electrical permit of the building department or the state',
  },
  {
    country: 'US',
    work: 'boiler',
    who: 'installer whom the state’s boiler office admits, where the heater is a boiler there',
    permit: 'installation permit and certificate of the state’s boiler office or its insurer’s inspector',
  },
  {
    country: 'US',
    work: 'building',
    who: 'contractor registered or licensed as the state asks',
    permit: 'building or mechanical permit; a swap of like for like may be exempt',
  },
  {
    country: 'US',
    region: 'CA',
    work: 'gas',
    who: 'contractor with the licence for pools (C-53), plumbing (C-36) or a class that covers the piping',
    permit: 'plumbing or mechanical permit of city or county',
  },
  {
    country: 'US',
    region: 'CA',
    work: 'electrical',
    who: 'electrical contractor (C-10), or a pool contractor (C-53) for what belongs to the pool',
    permit: 'electrical permit of city or county',
  },
  {
    country: 'CA',
    work: 'gas',
    who: 'certified gas technician: first class for any input, second class up to 400,000 Btu/h, third class under one of these',
    permit: 'permit or notice of the province’s gas authority',
  },
  {
    country: 'CA',
    work: 'electrical',
    who: 'electrician with a certificate, working for a licensed contractor',
    permit: 'permit of the province’s electrical authority (C22.1 rule 2-004)',
  },
  {
    country: 'CA',
    work: 'boiler',
    who: 'contractor admitted by the province’s pressure authority, where the heater is a boiler there',
    permit: 'registered design (CSA B51) and the authority’s inspection',
  },
  {
    country: 'CA',
    work: 'building',
    who: 'as the municipality asks',
    permit: 'building permit where enclosure, pad or pool fence are built',
  },
  {
    country: 'CA',
    region: 'ON',
    work: 'gas',
    who: 'G.1, G.2 or, under one of them, G.3, working for a registered fuels contractor',
    permit: 'no permit for most swaps; the technician’s own inspection and tags count',
  },
  {
    country: 'CA',
    region: 'ON',
    work: 'electrical',
    who: 'licensed electrical contractor',
    permit: 'notification of work to the province’s electrical authority',
  },
  {
    country: 'CA',
    region: 'QC',
    work: 'electrical',
    who: 'master electrician with the province’s building licence',
    permit: 'declaration of work to the province’s building authority',
  },
];
