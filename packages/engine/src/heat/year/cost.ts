/**
 * What a year costs and gives off.
 *
 * Source: arithmetic; emissions of burning by 40 CFR 98 (see `EMISSION_FACTORS`). The carbon of electricity differs by
 * grid and year and is left out unless its factor is given.
 * Range: as in `bill`.
 * Errors: those of the tariffs.
 */
import { EMISSION_FACTORS, type EmissionFuel } from '../../properties/index.ts';
import { fail, ok, type Result } from '../../trace/index.ts';
import { type Bill, bill, type Tariff } from '../tariff/index.ts';
import type { HeaterMonths } from './heater.ts';

export interface Prices {
  readonly fuel: EmissionFuel;
  readonly fuelTariff: Tariff;
  /** Left out, electricity costs nothing. */
  readonly electricityTariff?: Tariff;
  /** kg of carbon dioxide a joule of electricity. */
  readonly electricityCarbon?: number;
}

export interface YearCost {
  readonly fuel: Bill;
  readonly electricity?: Bill;
  /** Money a year. */
  readonly total: number;
  /** kg a year of carbon dioxide, and of all that warms counted as it. */
  readonly carbonDioxide: number;
  readonly carbonDioxideEquivalent: number;
}

/** Money and carbon of what a heater used in the twelve months. */
export function yearCost(used: HeaterMonths, prices: Prices): Result<YearCost> {
  const fuel = bill(prices.fuelTariff, used.fuel);
  const electricity = prices.electricityTariff ? bill(prices.electricityTariff, used.electricity) : undefined;
  if (!fuel.ok) return fail(...fuel.issues, ...(electricity && !electricity.ok ? electricity.issues : []));
  if (electricity && !electricity.ok) return electricity;
  const burnt = used.fuel.reduce((a, b) => a + b, 0);
  const drawn = used.electricity.reduce((a, b) => a + b, 0) * (prices.electricityCarbon ?? 0);
  const factor = EMISSION_FACTORS[prices.fuel];
  return ok({
    fuel: fuel.value,
    ...(electricity ? { electricity: electricity.value } : {}),
    total: fuel.value.total + (electricity?.value.total ?? 0),
    carbonDioxide: burnt * factor.carbonDioxide + drawn,
    carbonDioxideEquivalent: burnt * factor.carbonDioxideEquivalent + drawn,
  });
}
