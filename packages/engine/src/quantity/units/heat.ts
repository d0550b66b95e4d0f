/**
 * Units of temperature, energy and heat. A Btu is the international table Btu.
 *
 * M before Btu is the trade's thousand (as in MBH), not the SI million; the reading says so. Source: NIST SP 811
 * (2008), Appendix B.
 */
import {
  BOILER_HORSEPOWER,
  BTU,
  CALORIE,
  DAY,
  ELECTRIC_HORSEPOWER,
  FAHRENHEIT_STEP,
  FOOT,
  HORSEPOWER,
  HOUR,
  INCH,
  METRIC_HORSEPOWER,
  MINUTE,
  POUND,
  POUND_FORCE,
  REFRIGERATION_TON,
  SQUARE_FOOT,
  THERM,
  ZERO_CELSIUS,
} from '../constants.ts';
import type { Kind } from '../kinds.ts';
import { type ParseNote, type Unit, unit } from '../unit.ts';

const RATES: readonly Kind[] = ['heat-rate', 'power'];
const BY_MASS: readonly Kind[] = ['latent-heat', 'heating-value-by-mass'];
const TWO: readonly Kind[] = ['temperature-difference'];

function hourly(...names: readonly string[]): Record<string, ParseNote> {
  return Object.fromEntries(names.map((name) => [name, 'per-hour-understood']));
}

const THOUSAND: Record<string, ParseNote> = {
  'MBtu/h': 'm-is-thousand',
  MBtuh: 'm-is-thousand',
  MBtu: 'm-is-thousand',
};

export const HEAT_UNITS: readonly Unit[] = [
  unit(['K', 'kelvin|kelvins|degK'], ['temperature', 'temperature-difference'], 1),
  unit(['degC', 'C|deg C|celsius|degrees C|degrees celsius|Cdeg'], ['temperature'], 1, {
    offset: ZERO_CELSIUS,
  }),
  unit(['degF', 'F|deg F|fahrenheit|degrees F|degrees fahrenheit|Fdeg'], ['temperature'], FAHRENHEIT_STEP, {
    offset: 459.67,
  }),
  unit(['degR', 'R|rankine|deg R'], ['temperature'], FAHRENHEIT_STEP),
  unit(['delta degC', 'degC|C|deg C|Cdeg|celsius|delta C|degrees C|C diff'], TWO, 1, { label: '°C' }),
  unit(
    ['delta degF', 'degF|F|deg F|Fdeg|fahrenheit|delta F|degrees F|F diff|degR|R|delta degR|rankine'],
    TWO,
    FAHRENHEIT_STEP,
    { label: '°F' },
  ),

  unit(['J', 'joule|joules|W s'], ['energy'], 1),
  unit(['kJ', 'kilojoule|kilojoules'], ['energy'], 1000),
  unit(['MJ', 'megajoule|megajoules'], ['energy'], 1e6, { cased: true }),
  unit(['GJ', 'gigajoule|gigajoules'], ['energy'], 1e9),
  unit(['Wh', 'W h|watt-hour|watt-hours|watt hours'], ['energy'], HOUR),
  unit(['kWh', 'kW h|kilowatt-hour|kilowatt-hours|kilowatt hours'], ['energy'], 1000 * HOUR),
  unit(['MWh', 'MW h'], ['energy'], 1e6 * HOUR, { cased: true }),
  unit(['Btu', 'Btus'], ['energy'], BTU),
  unit(['kBtu', 'thousand Btu'], ['energy'], 1000 * BTU, { noted: { MBtu: 'm-is-thousand' } }),
  unit(['MMBtu', 'million Btu|mm Btu'], ['energy'], 1e6 * BTU),
  unit(['therm', 'therms|thm'], ['energy'], THERM),
  unit(['cal', 'calorie|calories'], ['energy'], CALORIE),
  unit(['kcal', 'kilocalorie|kilocalories'], ['energy'], 1000 * CALORIE),
  unit(['ft lbf', 'ft lb|ft-lb|foot-pounds|ft-lbf'], ['energy'], FOOT * POUND_FORCE),

  unit(['W', 'watt|watts|J/s'], RATES, 1),
  unit(['mW', 'milliwatt|milliwatts'], ['power'], 0.001, { cased: true }),
  unit(['kW', 'kilowatt|kilowatts|kJ/s'], RATES, 1000),
  unit(['MW', 'megawatt|megawatts'], RATES, 1e6, { cased: true }),
  unit(['Btu/h', 'Btuh'], RATES, BTU / HOUR, { noted: hourly('Btu', 'Btus') }),
  unit(['kBtu/h', 'MBH|kBtuh|thousand Btu/h|thousand Btuh'], RATES, (1000 * BTU) / HOUR, {
    noted: { ...THOUSAND, ...hourly('kBtu', 'thousand Btu') },
  }),
  unit(['MMBtu/h', 'MMBtuh|MMBH|million Btu/h|mm Btu/h'], RATES, (1e6 * BTU) / HOUR, {
    noted: hourly('MMBtu', 'million Btu'),
  }),
  unit(['Btu/min'], RATES, BTU / MINUTE),
  unit(['Btu/d', 'Btu/day'], RATES, BTU / DAY),
  unit(['kWh/d', 'kWh/day'], RATES, (1000 * HOUR) / DAY),
  unit(['therm/h', 'therms/h'], RATES, THERM / HOUR),
  unit(['MJ/h'], RATES, 1e6 / HOUR, { cased: true }),
  unit(['GJ/h'], RATES, 1e9 / HOUR),
  unit(['kJ/h'], RATES, 1000 / HOUR),
  unit(['kcal/h'], RATES, (1000 * CALORIE) / HOUR),
  unit(
    ['ton', 'tons|TR|ton of refrigeration|tons of refrigeration|refrigeration ton'],
    ['heat-rate'],
    REFRIGERATION_TON,
  ),
  unit(['boiler hp', 'BoHP|boiler horsepower'], ['heat-rate'], BOILER_HORSEPOWER),
  unit(['hp', 'horsepower|HP'], ['power'], HORSEPOWER),
  unit(['electric hp', 'hp(E)|electric horsepower'], ['power'], ELECTRIC_HORSEPOWER),
  unit(['metric hp', 'PS|hp(M)|metric horsepower'], ['power'], METRIC_HORSEPOWER),

  unit(['W/m2'], ['heat-flux'], 1),
  unit(['kW/m2'], ['heat-flux'], 1000),
  unit(['Btu/(h ft2)', 'Btu/h/ft2|Btuh/ft2'], ['heat-flux'], BTU / HOUR / SQUARE_FOOT),
  unit(['kWh/(m2 d)', 'kWh/m2/day|kWh/m2/d'], ['heat-flux'], (1000 * HOUR) / DAY),
  unit(['MJ/(m2 d)', 'MJ/m2/day|MJ/m2/d'], ['heat-flux'], 1e6 / DAY, { cased: true }),
  unit(['Btu/(ft2 d)', 'Btu/ft2/day|Btu/ft2/d'], ['heat-flux'], BTU / SQUARE_FOOT / DAY),

  unit(['J/(kg K)'], ['specific-heat'], 1),
  unit(['kJ/(kg K)'], ['specific-heat'], 1000),
  unit(['Btu/(lb degF)', 'Btu/lb/F'], ['specific-heat'], BTU / POUND / FAHRENHEIT_STEP),
  unit(['kcal/(kg K)', 'kcal/(kg degC)'], ['specific-heat'], 1000 * CALORIE),
  unit(['J/kg'], BY_MASS, 1),
  unit(['kJ/kg'], BY_MASS, 1000),
  unit(['MJ/kg'], BY_MASS, 1e6, { cased: true }),
  unit(['Btu/lb'], BY_MASS, BTU / POUND),
  unit(['kWh/kg'], BY_MASS, 1000 * HOUR),

  unit(['W/K'], ['conductance'], 1),
  unit(['kW/K'], ['conductance'], 1000),
  unit(['Btu/(h degF)', 'Btu/h/F|Btuh/F'], ['conductance'], BTU / HOUR / FAHRENHEIT_STEP),
  unit(['W/(m2 K)'], ['transmittance'], 1),
  unit(['Btu/(h ft2 degF)'], ['transmittance'], BTU / HOUR / SQUARE_FOOT / FAHRENHEIT_STEP),
  unit(['W/(m K)'], ['thermal-conductivity'], 1),
  unit(['Btu/(h ft degF)'], ['thermal-conductivity'], BTU / HOUR / FOOT / FAHRENHEIT_STEP),
  unit(
    ['Btu in/(h ft2 degF)'],
    ['thermal-conductivity'],
    (BTU * INCH) / HOUR / SQUARE_FOOT / FAHRENHEIT_STEP,
  ),
];
