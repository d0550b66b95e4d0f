/** What the heat line looked for: evaporation, covers, costs, climate, properties, altitude. */
import { type Chapter, entry } from './entry.ts';

const SURFACE = 'packages/engine/src/heat/surface/surface.test.ts';
const EVAPORATION = 'packages/engine/src/heat/surface/evaporation/evaporation.test.ts';

export const HEAT_CHAPTER: Chapter = {
  title: 'Heat',
  entries: [
    entry(
      'Evaporation equations and their other units',
      'Carrier, ASHRAE, Smith, Shah, ISO/TR 12596, RETScreen',
      [
        'heat/evaporation-iso',
        'heat/evaporation-units',
        'heat/shah-pounds',
        'heat/shah-swimmers-pounds',
        EVAPORATION,
      ],
    ),
    entry(
      'Evaporation by (25 + 19·v)·A·(xs − x)',
      'general engineering reference',
      [],
      'A rule of thumb without range or test behind it; six methods that have one are built.',
    ),
    entry(
      'Measured over computed evaporation',
      'Smith, Löf and Jones 1994 and 1998',
      ['heat/measured-outdoor', 'heat/measured-quiet'],
      'Four data sets of occupied pools are published as one mean deviation of 18 %, carried as the doubt of that method.',
    ),
    entry('Activity factors', 'ASHRAE Handbook-HVAC Applications', [
      'heat/activity-read',
      'heat/activity-recalled',
      'heat/activity-units',
      'heat/swimmers',
    ]),
    entry(
      'Convection, long wave, ground, make-up',
      'Bowen, McAdams, Watmuff, Berdahl and Martin, Brunt, Idso, Li, Clark and Allen',
      ['heat/bowen', 'climate/typical-year-sky-radiation-clark-allen', SURFACE],
    ),
    entry(
      'Covers: evaporation and sun',
      'Muleta (2016); US DOE RSPEC',
      ['heat/cover-evaporation', 'heat/cover-sun', 'heat/cover-sun-bubble'],
      'Savings of cost, make-up and chemicals as wide ranges (50 to 70 %): they follow from the year of a given pool.',
    ),
    entry('Cost of a season in two cities', 'US DOE', [
      'heat-year/doe-heat-pump-costs',
      'heat-year/doe-gas-costs',
      'heat-year/doe-heat-pump-costs-covered',
      'heat-year/doe-gas-costs-covered',
    ]),
    entry('Rules of thumb: surface, 12·A·ΔT, 10 to 30 % a degree', 'US DOE; HVAC trade handbook', [
      'heat-year/surface-rule-input',
      'heat-year/surface-rule-beside-loss',
      'heat-year/doe-degree',
    ]),
    entry(
      'Field efficiency of 70 % of gas heaters; usual outputs; depth of evaporation a week or a year',
      'Root (1983) FSEC-IN-23-83; US DOE; Cal Poly',
      [],
      'Surveys of many pools: a job has its own plate, flue test and weather, and the range would prove none of them.',
    ),
    entry('Warming a spa, a gallon, an inch, a pound evaporated', 'operator course; US DOE', [
      'heat/operator-warming',
      'heat/operator-gallon',
      'heat/doe-gallon',
      'heat/doe-inch-water',
      'heat/doe-inch-heat',
      'properties/doe-latent-heat',
    ]),
  ],
};

export const CLIMATE_CHAPTER: Chapter = {
  title: 'Climate, properties, altitude',
  entries: [
    entry('Monthly means of typical years, nine US cities', 'NREL TMY3', [
      'climate/typical-year-air-temperature-returned',
      'climate/typical-year-dew-point-returned',
      'climate/typical-year-wind-returned',
      'climate/typical-year-sunshine-returned',
      'climate/typical-year-relative-humidity',
      'climate/typical-year-cloud-from-sunshine',
      'climate/typical-year-sky-radiation',
      'climate/typical-year-ground',
    ]),
    entry('Hours of a typical year: sun and humidity', 'NREL TMY3, Greensboro; ASHRAE IWEC, Amsterdam', [
      'climate/station-sun',
      'climate/station-humidity',
      'climate/station-humidity-in-frost',
      'climate/weather-file-extraterrestrial',
    ]),
    entry(
      'Where weather files are',
      'public repositories',
      ['packages/engine/src/heat/climate/epw/read.test.ts'],
      'A list of places to fetch from: files are read, not shipped.',
    ),
    entry(
      'Normals 1981-2010: annual means, Chicago by month',
      'NOAA NCEI',
      ['climate/noaa-annual-means', 'climate/noaa-degree-days', 'climate/noaa-daily-swing'],
      'Orlando and Tampa: no typical year of them is on board.',
    ),
    entry('Sunshine by month', 'NREL Redbook, from memory', ['climate/redbook-insolation']),
    entry('Water from 0 to 50 °C, saturation', 'IAPWS-IF97; ASHRAE Handbook-Fundamentals 2017', [
      'properties/water-density',
      'properties/water-poundsPerGallon',
      'properties/water-specificHeat',
      'properties/water-btuPerPoundFahrenheit',
      'properties/water-enthalpy',
      'properties/water-vapourPressure',
      'properties/water-latentHeat',
      'properties/water-viscosity',
      'properties/water-conductivity',
      'properties/water-handbookPressure',
      'properties/if97-table-35',
      'properties/if97-table-36',
      'properties/handbook-saturation',
      'properties/handbook-saturation-pounds',
      'properties/handbook-saturated-air',
    ]),
    entry('Fuel gases', 'Menon, Piping Calculations Manual', [
      'properties/menon-heat-by-volume',
      'properties/menon-heat-by-mass',
      'properties/menon-gravity',
      'properties/menon-density',
    ]),
    entry(
      'Emission factors',
      '40 CFR 98, Tables C-1 and C-2',
      ['properties/epa-carbon', 'properties/epa-propane-heat', 'properties/epa-factors'],
      'Table NN-1 is the same figure a barrel or a thousand cubic feet.',
    ),
    entry('Standard atmosphere, boiling point', 'US Standard Atmosphere 1976; a kitchen table', [
      'altitude/standard-atmosphere-temperature',
      'altitude/standard-atmosphere-pressure',
      'altitude/standard-atmosphere-pressure-inhg',
      'altitude/standard-atmosphere-density',
      'altitude/standard-atmosphere-boiling',
      'altitude/standard-atmosphere-boiling-f',
      'altitude/boiling-table-fahrenheit',
      'altitude/boiling-table-celsius',
    ]),
  ],
};
