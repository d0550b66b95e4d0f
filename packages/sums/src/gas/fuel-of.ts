import { gas } from '@firstfire/engine';

/** The named gas of the code, with the heating value and gravity that were given, if any. */
export function fuelOf(name: gas.FuelName, heatingValue?: number, specificGravity?: number): gas.Fuel {
  const fuel = name === 'natural' ? gas.NATURAL_GAS : gas.PROPANE;
  return {
    name,
    heatingValue: heatingValue ?? fuel.heatingValue,
    specificGravity: specificGravity ?? fuel.specificGravity,
  };
}
