/** Small drawings beside choices that people know by sight: lines in a box 64 wide and 44 high, filled parts apart. */

export interface Drawing {
  readonly lines: string;
  readonly filled?: string;
}

type Drawings = Readonly<Record<string, Drawing>>;

const GROUND = 'M2 41H62';
const CABINET = 'M20 8H44V36H20z';
const HOUSE = 'M34 41V18H62V41M30 20 48 4 62 16';

const FUELS: Drawings = {
  // A meter on its pipe; a tank with its dome.
  natural: {
    lines: 'M4 30H18M46 30H60M18 14H46V36H18zM24 19H40V26H24z',
    filled: 'M4 28H18V32H4zM46 28H60V32H46z',
  },
  propane: { lines: 'M14 16H50A10 10 0 0 1 50 36H14A10 10 0 0 1 14 16zM28 16V9H36V16M16 36V42M48 36V42' },
};

const GAS_PIPES: Drawings = {
  'steel-schedule-40': { lines: 'M4 14H44V30H4M44 12H60V32H44zM48 12V32M52 12V32M56 12V32M4 14V30' },
  'copper-tube': { lines: 'M4 18H46V26H4zM46 16H60V28H46z' },
  csst: {
    lines:
      'M4 14Q8 10 12 14T20 14T28 14T36 14T44 14T52 14T60 14M4 30Q8 34 12 30T20 30T28 30T36 30T44 30T52 30T60 30',
  },
  polyethylene: { lines: 'M4 12H60V32H4zM4 22H60' },
};

const SHAPES: Drawings = {
  rectangle: { lines: 'M10 8H54V36H10z' },
  round: { lines: 'M32 6A16 16 0 1 1 32 38A16 16 0 1 1 32 6z' },
  oval: { lines: 'M32 8C50 8 56 14 56 22S50 36 32 36S8 30 8 22S14 8 32 8z' },
  stadium: { lines: 'M22 8H42A14 14 0 0 1 42 36H22A14 14 0 0 1 22 8z' },
  kidney: { lines: 'M18 8C28 8 26 14 34 14S42 6 50 10S60 34 46 37S12 40 8 26S10 8 18 8z' },
  L: { lines: 'M10 6H30V22H54V38H10z' },
  polygon: { lines: 'M12 14 32 5 54 12 50 36 22 39z' },
};

const TERMINALS: Drawings = {
  'above the roof': { lines: `${HOUSE}M46 6V0M42 0H50M6 41H34` },
  'through the wall': { lines: `${HOUSE}M38 28H24M24 24V32M4 41H34` },
  'direct vent': { lines: `${HOUSE}M38 25H24M38 31H24M24 22V34M4 41H34` },
};

const BYPASS: Drawings = {
  linear: { lines: 'M10 4V38H58M10 38 56 6' },
  'equal-percentage': { lines: 'M10 4V38H58M10 38C40 38 52 28 56 6' },
  ball: {
    lines:
      'M6 16H20M6 28H20M44 16H58M44 28H58M32 10A12 12 0 1 1 32 34A12 12 0 1 1 32 10zM26 18H38V26H26zM32 10V2H46',
  },
  butterfly: { lines: 'M6 10H58M6 34H58M24 34 40 10M32 22m-3 0a3 3 0 1 0 6 0a3 3 0 1 0-6 0M32 10V2H46' },
};

const STRANDS: Drawings = {
  solid: { lines: '', filled: 'M32 10A12 12 0 1 1 32 34A12 12 0 1 1 32 10z' },
  stranded: {
    lines:
      'M32 17a5 5 0 1 0 .1 0zM32 6a5 5 0 1 0 .1 0zM32 28a5 5 0 1 0 .1 0zM22 11.5a5 5 0 1 0 .1 0zM42 11.5a5 5 0 1 0 .1 0zM22 22.5a5 5 0 1 0 .1 0zM42 22.5a5 5 0 1 0 .1 0z',
  },
};

const GROUNDS: Drawings = {
  firm: { lines: 'M2 34H62', filled: 'M2 34H62V42H2z' },
  soft: { lines: 'M2 32Q10 26 18 32T34 32T50 32T62 30M10 38H14M26 40H30M44 38H48' },
  steps: { lines: 'M4 40H18V30H32V20H46V10H60' },
};

const FILTERS: Drawings = {
  sand: { lines: 'M20 14A12 8 0 0 1 44 14V36H20zM28 6V2H36V6M20 24H44', filled: 'M20 24H44V36H20z' },
  cartridge: { lines: 'M20 6H44V40H20zM26 10V36M32 10V36M38 10V36' },
  diatomaceous: { lines: 'M20 6H44V40H20zM24 12H40M24 18H40M24 24H40M24 30H40' },
};

const DRAWINGS: Readonly<Record<string, Drawings>> = {
  'gasSupply.fuel': FUELS,
  'heaters.fuel': FUELS,
  'gasSegments.material': GAS_PIPES,
  'basins.shape': SHAPES,
  'spots.terminal': TERMINALS,
  'waterLoop.bypassCharacter': BYPASS,
  'circuits.bondStrands': STRANDS,
  'lifts.ground': GROUNDS,
  'filters.kind': FILTERS,
  'heaters.waterSide': {
    left: { lines: `${CABINET}M2 16H20M2 28H20M28 14H38V20H28z${GROUND}` },
    right: { lines: `${CABINET}M44 16H62M44 28H62M26 14H36V20H26z${GROUND}` },
  },
  'spots.condensateDrain': {
    none: { lines: `${CABINET}${GROUND}` },
    'by gravity': { lines: `M8 4H30V24H8zM30 20H38V30Q38 34 42 34T46 30V26H52V41${GROUND}` },
    pump: { lines: `M8 4H30V24H8zM18 24V30M10 30H28V40H10zM28 34H40V6H60${GROUND}` },
  },
  'spots.terminalDeck': {
    none: { lines: `M8 41V4M8 24H22M22 20V28${GROUND}` },
    'open on two sides': { lines: `M8 41V4M8 26H22M22 22V30M8 10H60M56 10V41${GROUND}` },
    'closed in': { lines: `M8 41V4M8 26H22M22 22V30M8 10H60M56 10V41M32 10V41M40 10V41M48 10V41${GROUND}` },
  },
};

/** Undefined where a word says it as well. */
export function drawingOf(collection: string, field: string, choice: string): Drawing | undefined {
  return DRAWINGS[`${collection}.${field}`]?.[choice];
}

/** Every field with drawings, and its choices that have one. */
export function drawnChoices(): Readonly<Record<string, readonly string[]>> {
  return Object.fromEntries(Object.entries(DRAWINGS).map(([field, made]) => [field, Object.keys(made)]));
}
