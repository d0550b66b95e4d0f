/** Units of length, area, volume, time and motion. Source: NIST SP 811 (2008), Appendix B. */
import {
  CUBIC_FOOT,
  DAY,
  FOOT,
  HOUR,
  IMPERIAL_GALLON,
  INCH,
  KNOT,
  MILE,
  MINUTE,
  SQUARE_FOOT,
  STANDARD_GRAVITY,
  US_GALLON,
  YARD,
} from '../constants.ts';
import type { Kind } from '../kinds.ts';
import { type Unit, unit } from '../unit.ts';

const LENGTHS: readonly Kind[] = ['length', 'diameter', 'head'];
const VOLUMES: readonly Kind[] = ['volume', 'metered-gas-volume'];
const FLOWS: readonly Kind[] = ['volume-flow', 'metered-gas-flow'];

export const SPACE_UNITS: readonly Unit[] = [
  unit(['m', 'metre|metres|meter|meters'], LENGTHS, 1),
  unit(['cm', 'centimetre|centimetres|centimeter|centimeters'], LENGTHS, 0.01),
  unit(['mm', 'millimetre|millimetres|millimeter|millimeters'], LENGTHS, 0.001),
  unit(['km', 'kilometre|kilometres|kilometer|kilometers'], ['length'], 1000),
  unit(['um', 'micron|microns|micrometre|micrometres|micrometer|micrometers'], ['length', 'diameter'], 1e-6),
  unit(['in', `inch|inches|"|''|po|pouce|pouces|pulg|pulgada|pulgadas`], LENGTHS, INCH),
  unit(['ft', `foot|feet|'|pi|pied|pieds|pie|pies`], LENGTHS, FOOT),
  unit(['yd', 'yard|yards'], ['length'], YARD),
  unit(['mi', 'mile|miles'], ['length'], MILE),
  unit(['mil', 'mils|thou'], ['length', 'diameter'], INCH / 1000),
  unit(['m of head', 'm hd|m head|mhd|m w.c.|mH2O|m of water'], ['head'], 1),
  unit(
    [
      'ft of head',
      'ft hd|ft head|feet of head|feet head|fthd|foot head|ft w.c.|ftH2O|ft of water|feet of water',
    ],
    ['head'],
    FOOT,
  ),

  unit(['m2', 'sq m|sqm|square metre|square metres|square meter|square meters'], ['area', 'wire-size'], 1),
  unit(['cm2', 'sq cm'], ['area'], 1e-4),
  unit(['mm2', 'sq mm'], ['area', 'wire-size'], 1e-6),
  unit(['ft2', 'sq ft|sqft|square foot|square feet|sf|pi2|pie2|pies2'], ['area'], SQUARE_FOOT),
  unit(['in2', 'sq in|sqin|square inch|square inches'], ['area', 'wire-size'], INCH ** 2),
  unit(['yd2', 'sq yd'], ['area'], YARD ** 2),

  unit(['m3', 'cu m|cubic metre|cubic metres|cubic meter|cubic meters|cbm'], VOLUMES, 1),
  unit(['L', 'litre|litres|liter|liters'], VOLUMES, 0.001),
  unit(['mL', 'millilitre|millilitres|milliliter|milliliters|cm3|cc'], ['volume'], 1e-6),
  unit(['ft3', 'cu ft|cuft|cf|cubic foot|cubic feet|acf|actual ft3|pi3|pie3|pies3'], VOLUMES, CUBIC_FOOT),
  unit(['ccf', 'hcf'], VOLUMES, 100 * CUBIC_FOOT),
  unit(['Mcf', 'kcf'], VOLUMES, 1000 * CUBIC_FOOT),
  unit(['in3', 'cu in|cubic inch|cubic inches'], ['volume'], INCH ** 3),
  unit(['yd3', 'cu yd|cubic yard|cubic yards'], ['volume'], YARD ** 3),
  unit(['gal', 'gallon|gallons|gals|galones|US gal|US gallon|US gallons|USgal'], ['volume'], US_GALLON),
  unit(
    ['imp gal', 'imperial gal|imperial gallon|imperial gallons|UK gal|UK gallon|UK gallons'],
    ['volume'],
    IMPERIAL_GALLON,
  ),
  unit(['qt', 'quart|quarts'], ['volume'], US_GALLON / 4),

  unit(['s', 'sec|secs|second|seconds'], ['time'], 1),
  unit(['ms', 'millisecond|milliseconds'], ['time'], 0.001, { cased: true }),
  unit(['min', 'mins|minute|minutes'], ['time'], MINUTE),
  unit(['h', 'hr|hrs|hour|hours'], ['time'], HOUR),
  unit(['d', 'day|days'], ['time'], DAY),
  unit(['wk', 'week|weeks'], ['time'], 7 * DAY),
  unit(['a', 'yr|year|years|y'], ['time'], 365 * DAY),

  unit(['rad', 'radian|radians'], ['angle'], 1),
  unit(['deg', 'degree|degrees'], ['angle'], Math.PI / 180),

  unit(['m/s', 'mps'], ['velocity'], 1),
  unit(['km/h', 'kph|kmh|km/hr'], ['velocity'], 1 / 3.6),
  unit(['ft/s', 'fps|pi/s|pie/s|pies/s'], ['velocity'], FOOT),
  unit(['ft/min', 'fpm'], ['velocity'], FOOT / MINUTE),
  // Flow through a filter over its area.
  unit(['gpm/ft2', 'gpm/sq ft|gpm per ft2'], ['velocity'], US_GALLON / MINUTE / SQUARE_FOOT),
  unit(['m3/(h m2)', 'm3/h/m2|m/h'], ['velocity'], 1 / HOUR),
  unit(['mph', 'mi/h|miles/h'], ['velocity'], MILE / HOUR),
  unit(['kn', 'knot|knots|kt|kts'], ['velocity'], KNOT),

  unit(['m/s2'], ['acceleration'], 1),
  unit(['ft/s2'], ['acceleration'], FOOT),
  unit(['gn', 'g0|standard gravity'], ['acceleration'], STANDARD_GRAVITY),

  unit(['1/s', 'Hz|hertz|/s|s-1'], ['frequency'], 1),
  unit(['1/min', 'rpm|r/min|rev/min|/min|min-1'], ['frequency'], 1 / MINUTE),
  unit(['1/h', '/h|ach|h-1'], ['frequency'], 1 / HOUR),
  unit(['1/d', '/d|/day|1/day|d-1'], ['frequency'], 1 / DAY),

  unit(['m3/s'], FLOWS, 1),
  unit(['m3/h', 'cmh|cu m/h'], FLOWS, 1 / HOUR),
  unit(['m3/min'], FLOWS, 1 / MINUTE),
  unit(['m3/d', 'm3/day'], FLOWS, 1 / DAY),
  unit(['L/s', 'lps|litres/s|liters/s'], FLOWS, 0.001),
  unit(['L/min', 'lpm|litres/min|liters/min'], FLOWS, 0.001 / MINUTE),
  unit(['L/h', 'lph|litres/h|liters/h'], FLOWS, 0.001 / HOUR),
  unit(['mL/min'], ['volume-flow'], 1e-6 / MINUTE),
  unit(['ft3/s', 'cfs|cu ft/s'], FLOWS, CUBIC_FOOT),
  unit(
    ['ft3/min', 'cfm|cu ft/min|cuft/min|cubic feet/min|cf/min|acfm|pi3/min|pies3/min'],
    FLOWS,
    CUBIC_FOOT / MINUTE,
  ),
  unit(['ft3/h', 'cfh|cu ft/h|cuft/h|cubic feet/h|cf/h|acfh|pi3/h|pie3/h|pies3/h'], FLOWS, CUBIC_FOOT / HOUR),
  unit(['Mcf/h', 'Mcfh'], FLOWS, (1000 * CUBIC_FOOT) / HOUR),
  unit(['gpm', 'US gpm|gal/min|US gal/min|USgpm|gallons/min|gpm US'], ['volume-flow'], US_GALLON / MINUTE),
  unit(['gph', 'US gph|gal/h|US gal/h|gallons/h'], ['volume-flow'], US_GALLON / HOUR),
  unit(['gpd', 'US gpd|gal/d|gal/day|gallons/d|gallons/day'], ['volume-flow'], US_GALLON / DAY),
  unit(
    ['imp gpm', 'imp gal/min|imperial gpm|UK gpm|igpm|imperial gallons/min'],
    ['volume-flow'],
    IMPERIAL_GALLON / MINUTE,
  ),
  unit(['imp gph', 'imp gal/h|igph'], ['volume-flow'], IMPERIAL_GALLON / HOUR),
];
