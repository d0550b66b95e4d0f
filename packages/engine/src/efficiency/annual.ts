/**
 * A pool heater's standard year, as the US test procedure reckons it.
 *
 *     EF   = BOH·QIN + (POH − BOH)·QPR + (8760 − POH)·Qoff          fuel
 *     EAE  = BOH·PE + (POH − BOH)·PWSB + (8760 − POH)·PWOFF         electricity
 *     EOUT = BOH·Et·(QIN + PE)                                       heat into the water
 *     TEI  = EOUT/(EF + EAE)                                         integrated thermal efficiency
 *
 * BOH = 104 h of burner, POH = 4464 h of pool season. It compares heaters; a real year stands under `heat`.
 *
 * How sources disagree: the procedure's first version knew fuel and burner electricity alone; with nothing but those
 * the two agree. A watt counts as 3.412 Btu/h there, exactly here: 0.004 %.
 *
 * Source: 10 CFR 430 Subpart B, Appendix P: the first version read in a public copy; the current one (77 FR 74559 and
 * 80 FR 792) from memory.
 * Range: input to 2 MW, thermal efficiency 0.3 to 1.2, up to 20 kW of anything else.
 * Errors: range issues of `evaluate`; no input at all is `no-solution`.
 * Worked example: 250 000 Btu/h, 82 %, 700 Btu/h electric, 8 W standing by, 5 W off → 26.0 MBtu of fuel, 81.4 %.
 */
import { HOUR } from '../quantity/index.ts';
import type { Formula, Source, Variable } from '../trace/index.ts';

export const APPENDIX_P_SOURCE: Source = {
  document: '10 CFR 430 Subpart B, Appendix P',
  at: 'current version, 77 FR 74559 and 80 FR 792',
  known: 'from memory',
};

/** Hours of the standard year, s. */
const BURNER_HOURS = 104 * HOUR;
const POOL_HOURS = 4464 * HOUR;
const YEAR = 8760 * HOUR;

const small = (symbol: string, kind: 'heat-rate' | 'power'): Variable => ({
  symbol,
  kind,
  min: 0,
  max: 20_000,
});
const heatInput: Variable = { symbol: 'QIN', kind: 'heat-rate', min: 0, max: 2e6 };
const burnerPower = small('PE', 'power');

export interface FuelYear {
  /** QIN, W. */
  readonly heatInput: number;
  /** QPR, standing pilot, W. */
  readonly pilot: number;
  /** Qoff, fuel out of season, W. */
  readonly offHeat: number;
}

/** Fuel of the standard year, J. */
export const annualFuel: Formula<FuelYear> = {
  id: 'efficiency.annual-fuel',
  equation: 'EF = BOH·QIN + (POH − BOH)·QPR + (8760 − POH)·Qoff',
  inputs: { heatInput, pilot: small('QPR', 'heat-rate'), offHeat: small('Qoff', 'heat-rate') },
  result: { symbol: 'EF', kind: 'energy' },
  source: APPENDIX_P_SOURCE,
  kernel: (x) =>
    BURNER_HOURS * x.heatInput + (POOL_HOURS - BURNER_HOURS) * x.pilot + (YEAR - POOL_HOURS) * x.offHeat,
};

export interface ElectricYear {
  /** PE, while the burner runs, W. */
  readonly burnerPower: number;
  /** PWSB, standing by in season, W. */
  readonly standbyPower: number;
  /** PWOFF, out of season, W. */
  readonly offPower: number;
}

/** Electricity of the standard year, J. */
export const annualElectricity: Formula<ElectricYear> = {
  id: 'efficiency.annual-electricity',
  equation: 'EAE = BOH·PE + (POH − BOH)·PWSB + (8760 − POH)·PWOFF',
  inputs: { burnerPower, standbyPower: small('PWSB', 'power'), offPower: small('PWOFF', 'power') },
  result: { symbol: 'EAE', kind: 'energy' },
  source: APPENDIX_P_SOURCE,
  kernel: (x) =>
    BURNER_HOURS * x.burnerPower +
    (POOL_HOURS - BURNER_HOURS) * x.standbyPower +
    (YEAR - POOL_HOURS) * x.offPower,
};

export interface BurnerYear {
  readonly heatInput: number;
  readonly burnerPower: number;
  /** Et. */
  readonly thermalEfficiency: number;
}

/** Heat into the water in the standard year, J. */
export const annualOutput: Formula<BurnerYear> = {
  id: 'efficiency.annual-output',
  equation: 'EOUT = BOH·Et·(QIN + PE)',
  inputs: {
    heatInput,
    burnerPower,
    thermalEfficiency: { symbol: 'Et', kind: 'ratio', min: 0.3, max: 1.2 },
  },
  result: { symbol: 'EOUT', kind: 'energy' },
  source: APPENDIX_P_SOURCE,
  kernel: (x) => BURNER_HOURS * x.thermalEfficiency * (x.heatInput + x.burnerPower),
};

const yearly = (symbol: string): Variable => ({ symbol, kind: 'energy', min: 0, max: 1e14 });

/** Integrated thermal efficiency. */
export const integratedEfficiency: Formula<{
  readonly output: number;
  readonly fuel: number;
  readonly electricity: number;
}> = {
  id: 'efficiency.integrated',
  equation: 'TEI = EOUT/(EF + EAE)',
  inputs: { output: yearly('EOUT'), fuel: yearly('EF'), electricity: yearly('EAE') },
  result: { symbol: 'TEI', kind: 'ratio' },
  source: APPENDIX_P_SOURCE,
  kernel: (x) => x.output / (x.fuel + x.electricity),
};
