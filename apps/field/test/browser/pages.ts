/** Every page of a job, by what it shows, as an address below the job of the house pool. */
export const LINES = ['heat', 'gas', 'air', 'water', 'power', 'place'];

export const PAGES: Readonly<Record<string, string>> = {
  job: '',
  ...Object.fromEntries(LINES.map((line) => [`line-${line}`, `/${line}`])),
  'line-gas-ladder': '/gas/ladder',
  walk: '/walk',
  questions: '/questions/pad',
  leaving: '/leaving',
  history: '/history',
  'plate-all': '/plate/heaters/h1/all',
  plate: '/plate/heaters/h1',
  'plate-pump': '/plate/pumps/p1',
  working: '/working/gas.section-capacity@s1',
  'entry-quantity': '/read/gasSupply/-/setPressure',
  'entry-length': '/read/gasSegments/s1/length',
  'entry-choice': '/read/gasSegments/s1/material',
  'entry-yes-no': '/read/heaters/h1/planned',
  'entry-counts': '/read/gasSegments/s1/fittings',
  'entry-curve': '/read/pumps/p1/curve',
  'entry-size': '/read/gasSegments/s1/size',
  'entry-text': '/read/job/-/name',
  'entry-climate': '/read/site/-/climatePlace',
  'entry-day': '/read/job/-/date',
  'entry-pick': '/read/spots/spot1/heater',
};

/** Pages that belong to no job. */
export const OUTSIDE: Readonly<Record<string, string>> = {
  jobs: '/',
  new: '/new',
  keeping: '/keeping',
  settings: '/settings',
  equipment: '/equipment',
};
