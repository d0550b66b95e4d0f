/** The heaters of a basin as one, and what a year of them costs. */
import { fail, heat, ok, type Result } from '@firstfire/engine';
import { type Burner, heatOutput } from '../plant/heat/heating.ts';
import type { Values } from '../plant/model.ts';
import type { PriceReadings, YearReadings } from './readings.ts';

/**
 * All heaters together: heat by heat, so that a larger one counts for more. Electricity while firing is the volts times
 * the amperes of the nameplates, which is more than a meter counts where current lags.
 */
export function heaterOf({ burners, motors }: YearReadings, values: Values): Result<heat.Heater> {
  const output = heatOutput(burners, values);
  if (!output.ok) return output;
  const input = inputOf(burners, values);
  if (!input.ok) return input;
  if (!(input.value > 0)) return fail({ code: 'ill-formed', where: 'heaters', reason: 'none' });
  const power = motors.map((motor) => motor && values(motor[0]) * values(motor[1]));
  const known = power.every((watts) => watts !== undefined);
  return ok({
    output: output.value,
    efficiency: output.value / input.value,
    ...(known ? { firingPower: power.reduce((sum, watts) => sum + watts, 0) } : {}),
  });
}

function inputOf(burners: readonly Burner[], values: Values): Result<number> {
  let sum = 0;
  for (const { input } of burners) {
    const found = input(values);
    if (!found.ok) return found;
    sum += found.value;
  }
  return ok(sum);
}

/** Nothing where the price of the fuel is not known; without electricity where its price or use is not. */
export function costOf(
  answer: heat.YearAnswer,
  { fuel, electricity, propane }: PriceReadings,
  values: Values,
): Result<heat.YearCost | undefined> {
  if (fuel === undefined) return ok(undefined);
  const drawn = answer.electricity.some((energy) => energy > 0);
  return heat.yearCost(answer, {
    fuel: propane ? 'propane' : 'natural',
    fuelTariff: heat.flatTariff(values(fuel)),
    ...(electricity && drawn ? { electricityTariff: heat.flatTariff(values(electricity)) } : {}),
  });
}
