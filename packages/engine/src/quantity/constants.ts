/**
 * Exact conversion factors, each the SI value of one unit. Engine kernels that print their equation in the code's
 * own units convert with these; everything else converts at the edge, through the unit table.
 *
 * Source: NIST SP 811 (2008), Appendix B; inches of water at 4 °C and at 60 °F after the same table.
 */
export const INCH = 0.0254;
export const FOOT = 0.3048;
export const MILE = 1609.344;
export const SQUARE_FOOT = 0.09290304;
export const CUBIC_FOOT = 0.028316846592;
export const US_GALLON = 0.003785411784;
export const IMPERIAL_GALLON = 0.00454609;
export const POUND = 0.45359237;
/** International table Btu, J. */
export const BTU = 1055.05585262;
/** As bills count it, 100 000 Btu; NIST SP 811 lists a legal US therm of the 59 °F Btu, 0.024 % smaller. */
export const THERM = 100_000 * BTU;
export const PSI = 6894.757293168361;
/** Conventional inch of water (4 °C, standard gravity), Pa. */
export const INCH_OF_WATER = 249.08891;
export const ATMOSPHERE = 101_325;
export const STANDARD_GRAVITY = 9.80665;
export const HOUR = 3600;
export const MINUTE = 60;
export const DAY = 86_400;
export const HORSEPOWER = 745.6998715822702;
/** One degree Fahrenheit as a difference, K. */
export const FAHRENHEIT_STEP = 5 / 9;
export const ZERO_CELSIUS = 273.15;
/**
 * One standard cubic foot (60 °F, 14.73 psia) in the engine's standard cubic metres (15 °C, 101.325 kPa).
 */
export const STANDARD_CUBIC_FOOT =
  CUBIC_FOOT * ((14.73 * PSI) / ATMOSPHERE) * (288.15 / ((60 + 459.67) / 1.8));
export const YARD = 0.9144;
export const OUNCE = POUND / 16;
export const POUND_FORCE = POUND * STANDARD_GRAVITY;
/** What the trade calls an ounce of gas pressure, ounces-force on a square inch, Pa. */
export const OUNCE_PER_SQUARE_INCH = PSI / 16;
/** Conventional foot of water (4 °C, standard gravity), Pa. */
export const FOOT_OF_WATER = 12 * INCH_OF_WATER;
/** Conventional millimetre of mercury (13 595.1 kg/m3, standard gravity), Pa. */
export const MILLIMETRE_OF_MERCURY = 13.5951 * STANDARD_GRAVITY;
export const INCH_OF_MERCURY = 25.4 * MILLIMETRE_OF_MERCURY;
/** International table calorie, J. */
export const CALORIE = 4.1868;
export const KNOT = 1852 / 3600;
export const BOILER_HORSEPOWER = 9809.5;
export const METRIC_HORSEPOWER = 735.49875;
export const ELECTRIC_HORSEPOWER = 746;
/** Ton of refrigeration, 12 000 Btu/h, W. */
export const REFRIGERATION_TON = (12_000 * BTU) / HOUR;
/** Area of a circle one thousandth of an inch across, m2. */
export const CIRCULAR_MIL = (Math.PI / 4) * (INCH / 1000) ** 2;
