/** Twelve monthly means as typed, in the reader's units, and as the engine takes them. */
import { heat, type Issue, quantity, type Result } from '@firstfire/engine';
import { fieldFact, type JobView, type MonthColumn, RECORD_BY_COLLECTION } from '@firstfire/job';
import { numberIn } from '../entry/curve.ts';

export type Column = 'airTemperature' | 'relativeHumidity' | 'windSpeed' | 'globalRadiation';

type System = quantity.UnitSystem;

interface ColumnSpec {
  readonly name: Column;
  readonly unit: (system: System) => string;
  /** Of the engine's value in that unit, and back. */
  readonly shown: (si: number, system: System) => number;
  readonly si: (shown: number, system: System) => number;
}

const KILOWATT_HOUR = 3.6e6;
const windUnit = (system: System): string => (system === 'us' ? 'mph' : 'm/s');
const airUnit = (system: System): string => quantity.preferredUnit('temperature', system);

export const COLUMNS: readonly ColumnSpec[] = [
  {
    name: 'airTemperature',
    unit: airUnit,
    shown: (si, system) => quantity.fromSi(si, airUnit(system), 'temperature'),
    si: (shown, system) => quantity.si(shown, airUnit(system), 'temperature'),
  },
  { name: 'relativeHumidity', unit: () => '%', shown: (si) => si * 100, si: (shown) => shown / 100 },
  {
    name: 'windSpeed',
    unit: windUnit,
    shown: (si, system) => quantity.fromSi(si, windUnit(system), 'velocity'),
    si: (shown, system) => quantity.si(shown, windUnit(system), 'velocity'),
  },
  {
    name: 'globalRadiation',
    unit: () => 'kWh/m2',
    shown: (si) => si / KILOWATT_HOUR,
    si: (shown) => shown * KILOWATT_HOUR,
  },
];

export type NormalsTyped = Readonly<Record<Column, readonly string[]>>;

/** Twelve values of each, in the engine's units; sun J/m2 a day. */
export type Means = Partial<Readonly<Record<Column, readonly number[]>>>;

/** Means as one would type them; empty where there are none. */
export function typedFrom(means: Means, figure: (value: number) => string, system: System): NormalsTyped {
  const column = ({ name, shown }: ColumnSpec): readonly string[] =>
    Array.from({ length: heat.MONTHS }, (_, month) => {
      const si = means[name]?.[month] ?? Number.NaN;
      return Number.isNaN(si) ? '' : figure(Number(shown(si, system).toFixed(1)));
    });
  return Object.fromEntries(COLUMNS.map((spec) => [spec.name, column(spec)])) as NormalsTyped;
}

/** The months the job holds. */
export function meansOfJob(view: JobView): Means {
  const si = (month: number, name: Column): number => {
    const reading = view.record('climateMonths', String(month + 1)).reading(name);
    const fact = fieldFact('climateMonths', name, reading);
    if (fact.state !== 'number') return Number.NaN;
    return name === 'globalRadiation' ? fact.value * quantity.DAY : fact.value;
  };
  return Object.fromEntries(
    COLUMNS.map(({ name }) => [name, Array.from({ length: heat.MONTHS }, (_, month) => si(month, name))]),
  );
}

interface Reading {
  readonly marks: quantity.NumberMarks | undefined;
  readonly system: System;
}

/** What was typed as the columns a job keeps, in the units it was typed in, where all of it is understood. */
export function normalsTyped(
  typed: NormalsTyped,
  { marks, system }: Reading,
): Result<readonly MonthColumn[]> {
  const issues: Issue[] = [];
  const columns = COLUMNS.map((spec): MonthColumn => {
    const { name: field, unit } = spec;
    const values = typed[field].map((text, month) => {
      const value = numberIn(text, marks?.decimal === ',' ? ',' : '.');
      if (value === undefined)
        issues.push({ code: 'not-understood', where: `${field}.${month + 1}`, found: text });
      else issues.push(...outOfRange(spec, { value, month, system }));
      return value ?? Number.NaN;
    });
    if (field !== 'globalRadiation') return { field, unit: unit(system), values };
    // The mean over day and night of what a table gives a day.
    const flux = values.map((day) => (day * 1000) / 24);
    return { field, unit: 'W/m2', values: flux, typed: typed[field].map((text) => `${text} kWh/m2`) };
  });
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: columns };
}

interface Cell {
  readonly value: number;
  readonly month: number;
  readonly system: System;
}

/** What no month on earth has, by the limits of the field it is kept in. */
function outOfRange({ name, si }: ColumnSpec, { value, month, system }: Cell): readonly Issue[] {
  const spec = RECORD_BY_COLLECTION.get('climateMonths')?.fields[name];
  if (spec?.type !== 'quantity') return [];
  const found = name === 'globalRadiation' ? si(value, system) / quantity.DAY : si(value, system);
  const { min = -Infinity, max = Infinity, kind } = spec;
  if (found >= min && found <= max) return [];
  return [{ code: 'out-of-range', where: `${name}.${month + 1}`, found, min, max, kind }];
}
