/**
 * The ordinary words of citations, each under itself: what another language must have. Titles, names and equations
 * stay as they are printed (`as-printed.ts`). The longest phrase that fits a citation is taken, from left to right.
 */
import { SOURCE_CODES } from './source-codes.ts';
import { SOURCE_DETAILS } from './source-details.ts';

const SIGNS = [';', ':'];

const PLACES = [
  ...['Section', 'section', 'sections', 'Table', 'Tables', 'table', 'tables', 'Chapter', 'chapter'],
  ...[
    'Equation',
    'Equations',
    'equation',
    'Example',
    'example',
    'Appendix',
    'appendix',
    'appendices',
    'annex',
  ],
  ...['Figure', 'rule', 'pages', 'note', 'Unit', 'Subpart', 'subpart', 'Schedules'],
  ...['and', 'to', 'of', 'after', 'by', 'as', 'read as', 'with', 'of the'],
];

const HOW_KNOWN = [
  'read in the code',
  'read in a public copy',
  'from memory',
  'common practice, no source',
  'stated by the maker',
  'local amendment, as entered',
  'physics',
];

const READ_AT = [
  'read in the',
  'in the 2013 California Plumbing Code',
  'read in the 2013 California Mechanical Code',
  'read in the 2013 California Electrical Code',
  'as printed in the 2018 IRC and the 2013 California codes',
  'as printed in the 2013 California codes',
  'as printed in the 2018 North Carolina code and the 2022 New York City code',
  'as adopted in',
  'as quoted in a trade article',
  'as quoted in trade articles',
  'as quoted in a gas technician’s training text',
  'as quoted on a builders’ forum',
  'as quoted by',
  'as summed up on an inspection page',
  'some cells from memory',
];

const DOCUMENTS = [
  'nameplate or the maker’s instructions',
  'common practice',
  'physical law',
  // Printed in English and in French, each under a title of its own.
  'Canadian Electrical Code',
  'Trade',
  'Trade rule of thumb',
  'noise rules at the address',
  'zoning at the address',
  'the flood map of the address',
  'A switch must open at rest and make in every running state',
  'appliance tests',
  'Barometric formula',
  'balance of the reactions in dry air',
  'Certified pool operator arithmetic',
  'Continuity of flow',
  'Darcy–Weisbach equation',
  'Definition',
  'definition of NPSH',
  'definition of total head',
  'Definition of the Reynolds number',
  'Definition of the loss coefficient K',
  'Definition of turnover',
  'Energy balance of a pump',
  'Energy balance of the water through a heater',
  'Energy equation of a flowing liquid',
  'First law',
  'First law with moist-air enthalpy of',
  'Francis weir formula',
  'Gas technician training text',
  'Geometry',
  'half of the sample is air',
  'Hazen–Williams equation in SI',
  'Heat balance of the water',
  'Heat balance of the wetted shell',
  'heat balance of the flue gas',
  'HVAC trade handbook, pool heater surface-area method',
  'Hydrostatics',
  'Ideal-gas law',
  'inch-pound form',
  'Joukowsky equation',
  'Law of Stefan and Boltzmann',
  'the law of Stefan and Boltzmann',
  'Logarithmic wind profile',
  'Loss law of the device as given',
  'Mixing balance at the exchanger inlet',
  'older edition',
  'for propane, gas utilities’ service rules for natural gas',
  'Ohm’s law',
  'Orifice law',
  'Plug flow with loss through the wall',
  'Pool operator course, sample problems',
  'Power law between the rows of the code table of corrugated tubing',
  'Power law of the wind',
  'PVC equivalent length friction loss in fittings (table in public circulation)',
  'ratio of turns of an ideal transformer',
  'solar resource data',
  'Square law of a restriction',
  'Steady conduction',
  'Table of Hazen–Williams coefficients',
  'Table of minor loss coefficients',
  '(values of the common fluid-mechanics textbooks)',
  'test suite',
  'University course table IR-BH-1, friction loss for PVC class 160 pipe',
  'voltage drop',
  'wave speed',
  '14 March 2021',
  '(curve C)',
  '(A and B)',
];

export const SOURCES = Object.fromEntries(
  [...SIGNS, ...PLACES, ...HOW_KNOWN, ...READ_AT, ...DOCUMENTS, ...SOURCE_DETAILS, ...SOURCE_CODES].map(
    (text) => [text, text],
  ),
);
