/**
 * Reads the gas base at the end of a unit text: `ft3/h(60F,14.73psia)`, `m3 @ 0 °C; 101,325 kPa`. Its decimals have a
 * point or a comma, whoever reads: no base has thousands.
 */
import { PSI, ZERO_CELSIUS } from './constants.ts';
import { GAS_BASES, type GasBase } from './gas-base.ts';
import { asciiUnit } from './unit-text.ts';

const BASE =
  /^(.+?)\s*(?:\(|@|\bat\b)\s*(-?\d+(?:[.,]\d+)?)\s*(?:deg)?\s*([CFK])\s*(?:[,;&\s]|\band\b)\s*(\d+(?:[.,]\d+)?)\s*(psia|psi|kPa|kPaa|bar|bara|mbar|atm)\s*\)?$/;

const PRESSURES: Readonly<Record<string, number>> = {
  psia: PSI,
  psi: PSI,
  kPa: 1000,
  kPaa: 1000,
  bar: 1e5,
  bara: 1e5,
  mbar: 100,
  atm: 101_325,
};

export interface WrittenBase {
  /** The unit text without its base. */
  readonly before: string;
  readonly base: GasBase;
}

/** The base written at the end of `text`; undefined where there is none, or it is no possible state of a gas. */
export function readBase(text: string): WrittenBase | undefined {
  const match = BASE.exec(asciiUnit(text));
  if (match === null) return undefined;
  const [, before = '', degreesTyped = '', scale = '', pressureTyped = '', pressureUnit = ''] = match;
  const [degrees, pressure] = [degreesTyped, pressureTyped].map((typed) => Number(typed.replace(',', '.')));
  if (degrees === undefined || pressure === undefined) return undefined;
  const temperature = kelvins(degrees, scale);
  const pascals = pressure * (PRESSURES[pressureUnit] ?? Number.NaN);
  if (!(temperature > 100 && temperature < 1000 && pascals > 1e4 && pascals < 1e6)) return undefined;
  const id = `${degrees}${scale},${pressure}${pressureUnit.replace(/^psi$/, 'psia')}`;
  const known = Object.values(GAS_BASES).find((base) => base.id === id);
  return { before, base: known ?? { id, temperature, pressure: pascals } };
}

function kelvins(value: number, scale: string): number {
  if (scale === 'F') return (value + 459.67) / 1.8;
  return scale === 'C' ? value + ZERO_CELSIUS : value;
}
