/** Evaporation equations against measured pools, and against the other units they are printed in. */
import { heat, properties, quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const { BTU, CUBIC_FOOT, FOOT, HOUR, INCH_OF_MERCURY, MINUTE, POUND, SQUARE_FOOT, ZERO_CELSIUS } = quantity;
const { smith, carrier, handbook, iso, retscreen } = heat.WIND_FORMS;

const over = (a: heat.WindForm, b: heat.WindForm, speed: number) =>
  heat.windFormHeat(a, 1, speed) / heat.windFormHeat(b, 1, speed);

/** Air over a quiet pool: the handbook's 0.1 m/s. */
const QUIET = 0.1;

const MM_HG = 133.322;
/** One kJ/(h m2 mmHg), W/(m2 Pa). */
const KILOJOULE = 1000 / HOUR / MM_HG;

interface Room {
  readonly water: number;
  readonly air: number;
  readonly humidity: number;
}

/** °C. */
const ROOMS: readonly Room[] = [
  { water: 26, air: 28, humidity: 0.5 },
  { water: 28, air: 29, humidity: 0.6 },
  { water: 30, air: 27, humidity: 0.5 },
  { water: 35, air: 30, humidity: 0.4 },
  { water: 40, air: 25, humidity: 0.5 },
];

function layers({ water, air, humidity }: Room) {
  const Tw = water + ZERO_CELSIUS;
  const Ta = air + ZERO_CELSIUS;
  const atWater = properties.saturationPressureAt(Tw);
  const inAir = properties.vapourPressureAt(Ta, humidity);
  const pounds = (T: number, p: number) => (properties.dryAirDensityAt(T, p, 101_325) / POUND) * CUBIC_FOOT;
  return {
    Tw,
    Ta,
    atWater,
    inAir,
    Dw: pounds(Tw, atWater),
    Dr: pounds(Ta, inAir),
    Ww: properties.humidityRatioAt(atWater, 101_325),
    Wr: properties.humidityRatioAt(inAir, 101_325),
  };
}

/** lb/(h ft2), by Shah's inch-pound print. */
function shahInPounds(room: Room): number {
  const { Dw, Dr, Ww, Wr, atWater, inAir } = layers(room);
  const natural = Dr > Dw ? 290 * Dw * Math.cbrt(Dr - Dw) * (Ww - Wr) : 0;
  return Math.max(natural, (0.0346 * (atWater - inAir)) / INCH_OF_MERCURY);
}

function indoor(room: Room, swimmers: number): number {
  return heat.shahEvaporation.kernel({
    waterTemperature: room.water + ZERO_CELSIUS,
    airTemperature: room.air + ZERO_CELSIUS,
    relativeHumidity: room.humidity,
    pressure: 101_325,
    swimmers,
  });
}

const POUNDS = POUND / HOUR / SQUARE_FOOT;
const named = (room: Room) => `water ${room.water} °C, air ${room.air} °C, ${100 * room.humidity} %`;

const SHAH_CASES: readonly Case[] = ROOMS.map((room) => ({
  id: named(room),
  published: shahInPounds(room),
  computed: () => indoor(room, 0) / POUNDS,
}));

/** The last room lies beyond the correlation for swimmers. */
const SWIMMER_CASES: readonly Case[] = ROOMS.slice(0, -1).flatMap((room) =>
  [0.0093, 0.02].map((perFoot) => {
    const { Dr, Dw } = layers(room);
    return {
      id: `${named(room)}, ${perFoot} swimmers a ft2`,
      published: 1.9 - 336 * (Dr - Dw) + 57 * perFoot,
      computed: () => indoor(room, perFoot / SQUARE_FOOT) / indoor(room, 0),
    };
  }),
);

const PRACTICE = { area: 'heat', kind: 'practice' } as const;

export const EVAPORATION_SUITES: readonly Suite[] = [
  {
    id: 'heat/measured-outdoor',
    area: 'heat',
    kind: 'published',
    document: 'Smith, Löf and Jones (1994), Solar Energy 53(1):3-7',
    at: 'abstract: measured evaporation of an unoccupied outdoor pool over the handbook’s',
    quantity: 'ratio',
    band: { absolute: 0.02 },
    bandBecause:
      'the journal and the conference print of the same tests give 0.82 and 0.84 for the second figure',
    cases: [
      { id: 'no wind', published: 0.72, computed: () => over(smith, handbook, 0) },
      { id: '2.2 m/s', published: 0.82, computed: () => over(smith, handbook, 2.2) },
    ],
  },
  {
    id: 'heat/measured-quiet',
    area: 'heat',
    kind: 'published',
    document: 'Smith, Löf and Jones (1998), ASHRAE Transactions 104(1A) 4146',
    at: 'abstract: measured evaporation over Carrier’s (1918)',
    quantity: 'ratio',
    band: { absolute: 0.04 },
    bandBecause: 'the authors’ own studies of quiet pools print 0.72, 0.74 and 0.76',
    cases: [
      { id: 'quiet, 1998', published: 0.74, computed: () => over(smith, carrier, QUIET) },
      { id: 'quiet indoors, 1993', published: 0.76, computed: () => over(smith, carrier, QUIET) },
      {
        id: '15 to 20 swimmers a 1000 ft2',
        published: 1.26,
        computed: () => heat.SWIMMERS_FACTOR.many * over(smith, carrier, QUIET),
      },
    ],
  },
  {
    ...PRACTICE,
    id: 'heat/evaporation-iso',
    document: 'ISO/TR 12596:1995',
    at: 'from memory, against Smith, Löf and Jones',
    quantity: 'heat of evaporation, W/m2 a kPa',
    band: { relative: 0.04 },
    bandBecause: 'two correlations of much the same pools; 4 % is the distance known between them',
    cases: [0, 0.5, 1, 2].map((speed) => ({
      id: `${speed} m/s`,
      published: 1000 * heat.windFormHeat(iso, 1, speed),
      computed: () => 1000 * heat.windFormHeat(smith, 1, speed),
    })),
  },
  {
    ...PRACTICE,
    id: 'heat/evaporation-units',
    document: 'Evaporation equations in their other prints',
    at: 'from memory: Smith in W/(m2 Pa), Carrier in kJ/(h m2 mmHg), RETScreen’s wind slope',
    quantity: 'coefficient in the unit of the print',
    band: { relative: 0.006 },
    bandBecause: 'three printed digits on both sides; the handbook’s SI print is 0.6 % over Carrier’s own',
    cases: [
      { id: 'Smith, still', published: 0.0638, computed: () => smith.still },
      { id: 'Smith, a m/s', published: 0.0669, computed: () => smith.perSpeed },
      { id: 'RETScreen, a m/s', published: 0.0669, computed: () => retscreen.perSpeed },
      { id: 'RETScreen’s slope is Smith’s', published: retscreen.perSpeed, computed: () => smith.perSpeed },
      { id: 'Carrier, still', published: 42.7, computed: () => carrier.still / KILOJOULE },
      { id: 'Carrier, a m/s', published: 37.5, computed: () => carrier.perSpeed / KILOJOULE },
      { id: 'handbook, still', published: 95, computed: () => handbook.still / carrierUnit() },
      {
        id: 'handbook, a ft/min',
        published: 0.425,
        computed: () => (handbook.perSpeed * FOOT) / MINUTE / carrierUnit(),
      },
    ],
  },
  {
    ...PRACTICE,
    id: 'heat/activity-units',
    document: 'ASHRAE Handbook-HVAC Applications',
    at: 'activity form in pounds, 0.1·(pw − pa)·Fa, from memory',
    quantity: 'lb/(h ft2) an inHg',
    band: { relative: 0.005 },
    bandBecause: 'one printed digit on either side',
    cases: [
      {
        id: 'Fa = 1',
        published: 0.1,
        computed: () => (heat.activityMass(INCH_OF_MERCURY, 1) * HOUR * SQUARE_FOOT) / POUND,
      },
    ],
  },
  {
    ...PRACTICE,
    id: 'heat/shah-pounds',
    document: 'Shah, HPAC Engineering, October 2011',
    at: 'inch-pound form, constants from memory, worked here beside the SI form',
    quantity: 'evaporation with nobody in the pool, lb/(h ft2)',
    band: { relative: 0.005 },
    bandBecause: 'constants of three digits (290 and 0.0346)',
    cases: SHAH_CASES,
  },
  {
    ...PRACTICE,
    id: 'heat/shah-swimmers-pounds',
    document: 'Shah, HPAC Engineering, 27 March 2013',
    at: 'Equation 1, inch-pound form, worked here beside the SI form',
    quantity: 'evaporation with swimmers over that without',
    band: { relative: 0.005 },
    bandBecause: 'constants of two digits (57 and 336)',
    cases: SWIMMER_CASES,
  },
];

/** One Btu/(h ft2 inHg), W/(m2 Pa). */
function carrierUnit(): number {
  return BTU / HOUR / SQUARE_FOOT / INCH_OF_MERCURY;
}
