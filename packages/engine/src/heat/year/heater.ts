/**
 * What a heater burns for the heat it gives.
 *
 *     fuel = heat/η + pilot·(hours the pilot burns)        electricity = firing·(hours firing) + standby·(the others)
 *
 * η is the thermal efficiency of steady firing, of gross heat. Starting, and water cold or warm enough to change the
 * efficiency, are not counted; a pilot's heat is taken as lost.
 *
 * How sources disagree: laboratory efficiencies are about 80 %, and 50 to 75 % was found in field service in 1983,
 * where 70 % was advised when nothing better is known; the difference is standby, soot and age.
 *
 * Source: 10 CFR 430 Subpart B Appendix P (energy of a year, BOH·QIN + (POH − BOH)·QP); field service: Root (1983),
 * FSEC-IN-23-83.
 * Range: output 0 to 20 MW, η 0.3 to 1.1 (condensing, of net heat), pilot and electricity 0 to 10 kW.
 * Errors: values outside are issues.
 *
 * Worked example: 150,000 Btu/h input, pilot of 1,000 Btu/h all year, 104 h of firing → 24.256 million Btu of fuel.
 */
import { HOUR } from '../../quantity/index.ts';
import { type Issue, type Variable, variableIssue } from '../../trace/index.ts';
import { MONTHS } from '../climate/index.ts';

export interface Heater {
  /** Heat into the water while firing, W; of all heaters together. */
  readonly output: number;
  /** η. */
  readonly efficiency: number;
  /** Fuel of a standing pilot, W; none where absent. */
  readonly pilot?: number;
  /** Whether the pilot is put out outside the season. */
  readonly pilotOutOfSeason?: 'burns' | 'out';
  /** Electricity while firing, W. */
  readonly firingPower?: number;
  /** Electricity while waiting, W. */
  readonly standbyPower?: number;
}

const RANGES = {
  output: { symbol: 'P', kind: 'heat-rate', min: 0, max: 2e7 },
  efficiency: { symbol: 'η', kind: 'ratio', min: 0.3, max: 1.1 },
  pilot: { symbol: 'Pp', kind: 'heat-rate', min: 0, max: 1e4 },
  firingPower: { symbol: 'Pe', kind: 'power', min: 0, max: 1e4 },
  standbyPower: { symbol: 'Ps', kind: 'power', min: 0, max: 1e4 },
} as const satisfies Record<string, Variable>;

/** Everything that is wrong with a heater. */
export function heaterIssues(heater: Heater): Issue[] {
  return (Object.keys(RANGES) as (keyof typeof RANGES)[]).flatMap((name) => {
    const value = heater[name];
    const issue = value === undefined ? undefined : variableIssue(`heater.${name}`, value, RANGES[name]);
    return issue ? [issue] : [];
  });
}

export interface HeaterMonths {
  /** Fuel in each month, J of gross heat. */
  readonly fuel: readonly number[];
  /** Electricity in each month, J. */
  readonly electricity: readonly number[];
  /** Hours of full firing in each month. */
  readonly firingHours: readonly number[];
}

export interface HeaterWork {
  /** Heat given in each month, J. */
  readonly heat: readonly number[];
  /** Hours of each month. */
  readonly hours: readonly number[];
  /** Of these, hours in which anything is to be heated. */
  readonly inSeason: readonly number[];
}

/** What the heater used in each month. */
export function heaterMonths(heater: Heater, { heat, hours, inSeason }: HeaterWork): HeaterMonths {
  const { output, efficiency, pilot = 0, firingPower = 0, standbyPower = 0 } = heater;
  const months = Array.from({ length: MONTHS }, (_, m) => m);
  const firingHours = months.map((m) => (output > 0 ? (heat[m] ?? 0) / (output * HOUR) : 0));
  const waiting = months.map((m) => (hours[m] ?? 0) - (firingHours[m] ?? 0));
  const lit = months.map((m) => {
    const burning = heater.pilotOutOfSeason === 'out' ? (inSeason[m] ?? 0) : (hours[m] ?? 0);
    return Math.max(0, burning - (firingHours[m] ?? 0));
  });
  return {
    firingHours,
    // While the burner fires its input includes the pilot, as the test procedure counts it.
    fuel: months.map((m) => (heat[m] ?? 0) / efficiency + pilot * (lit[m] ?? 0) * HOUR),
    electricity: months.map(
      (m) => HOUR * (firingPower * (firingHours[m] ?? 0) + standbyPower * (waiting[m] ?? 0)),
    ),
  };
}
