/** Pure numbers, electricity, and money or emissions by energy. Source: NIST SP 811 (2008), Appendix B. */
import { BTU, CIRCULAR_MIL, HOUR, POUND, THERM } from '../constants.ts';
import { type Unit, unit } from '../unit.ts';

const KWH = 1000 * HOUR;
const MMBTU = 1e6 * BTU;

export const OTHER_UNITS: readonly Unit[] = [
  unit(['1'], ['ratio', 'ph', 'volume-fraction'], 1),
  unit(['%', 'percent|per cent|pct'], ['ratio', 'volume-fraction'], 0.01),
  unit(['permille', '‰|per mille'], ['ratio'], 0.001),
  unit(['ppm', 'parts/million'], ['ratio', 'volume-fraction'], 1e-6),
  unit(['ppb', 'parts/billion'], ['ratio', 'volume-fraction'], 1e-9),

  unit(['dB', 'dBA|dB(A)|dB A|decibel|decibels'], ['sound-level'], 1),

  unit(['V', 'volt|volts|Vac|V ac|VAC|Vdc|V dc'], ['voltage'], 1),
  unit(['mV', 'millivolt|millivolts'], ['voltage'], 0.001, { cased: true }),
  unit(['kV', 'kilovolt|kilovolts'], ['voltage'], 1000),
  unit(['A', 'amp|amps|ampere|amperes'], ['current'], 1),
  unit(['mA', 'milliamp|milliamps'], ['current'], 0.001, { cased: true }),
  unit(['uA', 'microamp|microamps|uA dc'], ['current'], 1e-6),
  unit(['ohm', 'ohms'], ['resistance'], 1),
  unit(['mohm', 'milliohm|milliohms'], ['resistance'], 0.001, { cased: true }),
  unit(['kohm', 'kiloohm|kilohm|kilohms'], ['resistance'], 1000),
  unit(['Mohm', 'megohm|megohms'], ['resistance'], 1e6, { cased: true }),

  unit(['AWG'], ['wire-size'], 1, { gauge: true }),
  unit(['cmil', 'circular mil|circular mils|CM'], ['wire-size'], CIRCULAR_MIL),
  unit(['kcmil', 'MCM|thousand circular mils'], ['wire-size'], 1000 * CIRCULAR_MIL),

  unit(['per J', '1/J'], ['price-per-energy'], 1),
  unit(['per MJ', '1/MJ'], ['price-per-energy'], 1e-6, { cased: true }),
  unit(['per GJ', '1/GJ'], ['price-per-energy'], 1e-9),
  unit(['per kWh', '1/kWh'], ['price-per-energy'], 1 / KWH),
  unit(['per therm', '1/therm'], ['price-per-energy'], 1 / THERM),
  unit(['per MMBtu', '1/MMBtu|per million Btu'], ['price-per-energy'], 1 / MMBTU),

  unit(['kg/J'], ['emission-factor'], 1),
  unit(['kg/MJ'], ['emission-factor'], 1e-6, { cased: true }),
  unit(['g/MJ'], ['emission-factor'], 1e-9, { cased: true }),
  unit(['kg/GJ'], ['emission-factor'], 1e-9),
  unit(['kg/kWh'], ['emission-factor'], 1 / KWH),
  unit(['g/kWh'], ['emission-factor'], 0.001 / KWH),
  unit(['lb/kWh'], ['emission-factor'], POUND / KWH),
  unit(['kg/MMBtu'], ['emission-factor'], 1 / MMBTU),
  unit(['lb/MMBtu', 'lb/million Btu'], ['emission-factor'], POUND / MMBTU),
  unit(['kg/therm'], ['emission-factor'], 1 / THERM),
  unit(['lb/therm'], ['emission-factor'], POUND / THERM),
];
