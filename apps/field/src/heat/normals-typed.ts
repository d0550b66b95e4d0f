/** Twelve monthly means as typed, in the reader's units, and as the engine takes them. */
import { type heat, type Issue, quantity, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
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

type Place = catalog.climate.ClimatePlace;

/** A place's means as one would type them. */
export function typedFrom(place: Place, figure: (value: number) => string, system: System): NormalsTyped {
  const normals = catalog.climate.normalsOf(place);
  const column = ({ name, shown }: ColumnSpec): readonly string[] =>
    (normals[name] ?? []).map((si) => figure(Number(shown(si, system).toFixed(1))));
  return Object.fromEntries(COLUMNS.map((spec) => [spec.name, column(spec)])) as NormalsTyped;
}

interface Reading {
  readonly marks: quantity.NumberMarks | undefined;
  readonly system: System;
}

/** What was typed, where all of it is understood. Where the place lies stays that of the place on board. */
export function normalsTyped(
  typed: NormalsTyped,
  place: Place,
  { marks, system }: Reading,
): Result<heat.MonthlyNormals> {
  const issues: Issue[] = [];
  const column = ({ name, si }: ColumnSpec): readonly number[] =>
    typed[name].map((text, month) => {
      const value = numberIn(text, marks?.decimal === ',' ? ',' : '.');
      if (value !== undefined) return si(value, system);
      issues.push({ code: 'not-understood', where: `${name}.${month + 1}`, found: text });
      return Number.NaN;
    });
  const columns = Object.fromEntries(COLUMNS.map((spec) => [spec.name, column(spec)])) as Record<
    Column,
    readonly number[]
  >;
  if (issues.length > 0) return { ok: false, issues };
  const { place: lies } = catalog.climate.normalsOf(place);
  return { ok: true, value: { place: lies, ...columns } };
}
