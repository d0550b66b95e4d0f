/** Units of mass, force, pressure and flow of matter. Source: NIST SP 811 (2008), Appendix B. */
import {
  ATMOSPHERE,
  CUBIC_FOOT,
  DAY,
  FOOT,
  FOOT_OF_WATER,
  HOUR,
  INCH_OF_MERCURY,
  INCH_OF_WATER,
  MILLIMETRE_OF_MERCURY,
  MINUTE,
  OUNCE,
  OUNCE_PER_SQUARE_INCH,
  POUND,
  POUND_FORCE,
  PSI,
  SQUARE_FOOT,
  STANDARD_GRAVITY,
  US_GALLON,
} from '../constants.ts';
import type { Kind } from '../kinds.ts';
import { type Unit, unit } from '../unit.ts';

const RELATIVE: readonly Kind[] = ['pressure', 'pressure-difference'];
const PRESSURES: readonly Kind[] = ['pressure', 'absolute-pressure', 'pressure-difference'];

const WATER_INCH =
  `in wc|in w.c|in. w.c.|in wg|in w.g.|in H2O|inH2O|iwc|iwg|in of water|in water|in water column|in of water column|` +
  `inch w.c.|inch wg|inch of water|inch water column|inches w.c.|inches wg|inches of water|inches water|` +
  `inches water column|inches of water column|" w.c.|" wg|" H2O|" of water|" water column|" water|''wc|po c.e.|po d'eau|pouces d'eau|pouces c.e.|pulg c.a.|pulg de agua|pulgadas de agua`;

/** Cv: US gpm of water at 60 °F through a drop of 1 psi. Kv: m³/h of water of 1000 kg/m³ through 1 bar. */
const CV = US_GALLON / MINUTE / Math.sqrt(PSI);
const KV = 1 / HOUR / Math.sqrt(1e5);

export const MATTER_UNITS: readonly Unit[] = [
  unit(['kg', 'kilogram|kilograms|kilo|kilos'], ['mass'], 1),
  unit(['g', 'gram|grams'], ['mass'], 0.001),
  unit(['mg', 'milligram|milligrams'], ['mass'], 1e-6, { cased: true }),
  unit(['t', 'tonne|tonnes|metric ton|metric tons'], ['mass'], 1000),
  unit(['lb', 'lbs|pound|pounds|lbm|#|livre|livres|libra|libras'], ['mass'], POUND),
  unit(['oz', 'ounce|ounces'], ['mass'], OUNCE),
  unit(['gr', 'grain|grains'], ['mass'], POUND / 7000),
  unit(['short ton', 'short tons|US ton|US tons'], ['mass'], 2000 * POUND),

  unit(['N', 'newton|newtons'], ['force'], 1),
  unit(['kN', 'kilonewton|kilonewtons'], ['force'], 1000),
  unit(['lbf', 'lb|lbs|pound|pounds|pound-force|lb-f'], ['force'], POUND_FORCE),
  unit(['kgf', 'kilogram-force|kp'], ['force'], STANDARD_GRAVITY),

  unit(['Pa', 'pascal|pascals|N/m2'], PRESSURES, 1),
  unit(['hPa'], PRESSURES, 100),
  unit(['kPa', 'kilopascal|kilopascals'], PRESSURES, 1000),
  unit(['MPa', 'megapascal|megapascals'], PRESSURES, 1e6, { cased: true }),
  unit(['mbar', 'mb|millibar|millibars'], PRESSURES, 100),
  unit(['bar', 'bars'], PRESSURES, 1e5),
  unit(['psi', 'lb/in2|lbf/in2|lb/sq in|pounds/sq in|pounds/square inch|#|lb/po2|lb/pulg2'], PRESSURES, PSI),
  unit(['psig', 'psi g|psi gauge|psi (gauge)|psi(g)'], RELATIVE, PSI),
  unit(['psid', 'psi d|psi diff|psi(d)'], ['pressure-difference'], PSI),
  unit(['psia', 'psi a|psi abs|psi absolute|psi (abs)|psi(a)'], ['absolute-pressure'], PSI),
  unit(['kPag', 'kPa g|kPa gauge|kPa (gauge)|kPa(g)'], RELATIVE, 1000),
  unit(['kPaa', 'kPa a|kPa abs|kPa absolute|kPa (abs)|kPa(a)'], ['absolute-pressure'], 1000),
  unit(['barg', 'bar g|bar gauge|bar(g)'], RELATIVE, 1e5),
  unit(['bara', 'bar a|bar abs|bar(a)'], ['absolute-pressure'], 1e5),
  unit(['in w.c.', WATER_INCH], PRESSURES, INCH_OF_WATER),
  unit(['mm w.c.', 'mm wc|mmwg|mm H2O|mmH2O|mm of water|mm water column'], PRESSURES, STANDARD_GRAVITY),
  unit(
    ['ft w.c.', 'ft wc|ft H2O|ftH2O|ft of water|feet of water|ft water|feet w.c.'],
    RELATIVE,
    FOOT_OF_WATER,
  ),
  unit(
    ['m w.c.', 'm wc|m H2O|mH2O|m of water|metres of water|meters of water'],
    RELATIVE,
    1000 * STANDARD_GRAVITY,
  ),
  unit(
    ['oz/in2', 'osi|ozf/in2|oz/sq in|ounces/sq in|ounces/square inch|opsi'],
    RELATIVE,
    OUNCE_PER_SQUARE_INCH,
    {
      noted: { oz: 'ounce-is-pressure', ounce: 'ounce-is-pressure', ounces: 'ounce-is-pressure' },
    },
  ),
  unit(['in Hg', 'inHg|inches of mercury|inches Hg|in of mercury|" Hg'], PRESSURES, INCH_OF_MERCURY),
  unit(['mm Hg', 'mmHg|mm of mercury'], PRESSURES, MILLIMETRE_OF_MERCURY),
  unit(['torr'], PRESSURES, ATMOSPHERE / 760),
  unit(['atm', 'atmosphere|atmospheres'], PRESSURES, ATMOSPHERE),
  unit(['lb/ft2', 'psf|lbf/ft2'], PRESSURES, POUND_FORCE / SQUARE_FOOT),

  unit(['kg/s'], ['mass-flow'], 1),
  unit(['kg/min'], ['mass-flow'], 1 / MINUTE),
  unit(['kg/h'], ['mass-flow'], 1 / HOUR),
  unit(['kg/d', 'kg/day'], ['mass-flow'], 1 / DAY),
  unit(['g/s'], ['mass-flow'], 0.001),
  unit(['lb/s'], ['mass-flow'], POUND),
  unit(['lb/min'], ['mass-flow'], POUND / MINUTE),
  unit(['lb/h', 'lbs/h|pph'], ['mass-flow'], POUND / HOUR),
  unit(['lb/d', 'lb/day|lbs/day'], ['mass-flow'], POUND / DAY),

  unit(['kg/(m2 s)'], ['mass-flux'], 1),
  unit(['kg/(m2 h)'], ['mass-flux'], 1 / HOUR),
  unit(['g/(m2 s)'], ['mass-flux'], 0.001),
  unit(['kg/(m2 d)', 'kg/(m2 day)'], ['mass-flux'], 1 / DAY),
  unit(['lb/(ft2 h)'], ['mass-flux'], POUND / SQUARE_FOOT / HOUR),

  unit(['kg/m3'], ['density', 'mass-concentration'], 1),
  unit(['g/cm3', 'kg/L|g/mL|g/cc'], ['density'], 1000),
  unit(['lb/ft3', 'lbs/ft3|pcf'], ['density'], POUND / CUBIC_FOOT),
  unit(['lb/gal', 'ppg|lbs/gal'], ['density'], POUND / US_GALLON),
  unit(['g/m3'], ['mass-concentration'], 0.001),
  unit(['mg/m3'], ['mass-concentration'], 1e-6, { cased: true }),
  unit(['ug/m3'], ['mass-concentration'], 1e-9),
  unit(['g/L'], ['mass-concentration'], 1),
  unit(['mg/L', 'mg/l'], ['mass-concentration'], 0.001, { noted: { ppm: 'ppm-is-mg-per-litre' } }),
  unit(['gr/gal', 'gpg|grains/gal|grains/gallon'], ['mass-concentration'], POUND / 7000 / US_GALLON),

  unit(['Pa s'], ['dynamic-viscosity'], 1),
  unit(['mPa s', 'cP|centipoise'], ['dynamic-viscosity'], 0.001),
  unit(['uPa s'], ['dynamic-viscosity'], 1e-6),
  unit(['P', 'poise'], ['dynamic-viscosity'], 0.1),
  unit(['lb/(ft s)'], ['dynamic-viscosity'], POUND / FOOT),
  unit(['lb/(ft h)'], ['dynamic-viscosity'], POUND / FOOT / HOUR),
  unit(['m2/s'], ['kinematic-viscosity'], 1),
  unit(['mm2/s', 'cSt|centistokes'], ['kinematic-viscosity'], 1e-6),
  unit(['ft2/s'], ['kinematic-viscosity'], SQUARE_FOOT),

  unit(['m3/(s Pa^0.5)'], ['flow-coefficient'], 1),
  unit(['Cv'], ['flow-coefficient'], CV, { label: 'Cv' }),
  unit(['Kv', 'kvs'], ['flow-coefficient'], KV, { label: 'Kv' }),
];
