export type { NamedWeather } from './weather.ts';
export type { BasinName, BasinYearStudy, YearNote, YearOfUse, YearOptions, YearStudy } from './year.ts';
export { yearOfJob } from './year.ts';
