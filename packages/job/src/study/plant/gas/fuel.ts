/** The fuel of a job: what the supplier says of it, or what its kind usually is, marked as assumed. */
import { gas } from '@firstfire/engine';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Values } from '../model.ts';
import type { GasPlan } from './gas-plan.ts';

const HEATING_VALUE = readingPath('gasSupply', '-', 'heatingValue');
const GRAVITY = readingPath('gasSupply', '-', 'specificGravity');

/** Takes what a fuel needs; the usual figures stand in, marked, where the supplier’s are not known. */
export function takeFuel(reader: SurveyReader, name: gas.FuelName): void {
  const usual = name === 'propane' ? gas.PROPANE : gas.NATURAL_GAS;
  const at = (field: string) => ({ collection: 'gasSupply', id: '-', field });
  reader.numberOrUsual(at('heatingValue'), { value: usual.heatingValue, kind: 'heating-value' });
  reader.numberOrUsual(at('specificGravity'), { value: usual.specificGravity, kind: 'ratio' });
}

export function fuelOf(plan: Pick<GasPlan, 'fuelName'>, values: Values): gas.Fuel {
  return { name: plan.fuelName, heatingValue: values(HEATING_VALUE), specificGravity: values(GRAVITY) };
}
