/** What is wrong with a pad before it is laid out; each issue names the part it is about. */
import { type Issue, variableIssue } from '../../trace/index.ts';
import { lossLawIssues } from '../loss/loss-law.ts';
import { pumpCurveIssues } from '../pump/curve.ts';
import { valveIssues } from '../valve/characteristic.ts';
import { lineIssues } from './line.ts';
import type { BasinBranch, HeaterBank, PadHeater, PadSpec, PadState } from './spec.ts';

const HEIGHT = { symbol: 'z', kind: 'length', min: -200, max: 200 } as const;
const TEMPERATURE = { symbol: 'T', kind: 'temperature', min: 273.15, max: 373.15 } as const;
const AIR = { symbol: 'p', kind: 'absolute-pressure', min: 3e4, max: 1.2e5 } as const;
const SHARE = { symbol: 'x', kind: 'ratio', min: 0, max: 1 } as const;
const FACTOR = { symbol: 'f', kind: 'ratio', min: 1e-3, max: 1e6 } as const;
const SPEED = { symbol: 's', kind: 'ratio', min: 0, max: 3 } as const;

/** Issues of a specification; empty when it can be laid out. */
export function padIssues(spec: PadSpec): Issue[] {
  return [
    ...basinIssues(spec),
    ...branchIssues('suctions', spec.suctions, spec),
    ...branchIssues('returns', spec.returns, spec),
    ...lineIssues('suction', spec.suction),
    ...lineIssues('discharge', spec.discharge),
    ...lineIssues('approach', spec.approach),
    ...lineIssues('departure', spec.departure),
    ...pumpCurveIssues('pump.curve', spec.pump.curve),
    ...lossLawIssues('filter.clean', spec.filter.clean),
    ...some(variableIssue('pump.elevation', spec.pump.elevation, HEIGHT)),
    ...some(variableIssue('filter.elevation', spec.filter.elevation, HEIGHT)),
    ...some(variableIssue('temperature', spec.temperature, TEMPERATURE)),
    ...some(variableIssue('airPressure', spec.airPressure, AIR)),
    ...(spec.bank ? bankIssues(spec.bank) : []),
    ...bypassIssues(spec),
  ];
}

/** Issues of a state; empty when the pad can be put into it. Asked before every solve. */
export function stateIssues(state: PadState): readonly Issue[] {
  const issues: Issue[] = [];
  const { temperature, from, to, wear } = state;
  note(issues, variableIssue('speed', state.speed, SPEED));
  note(issues, variableIssue('loading', state.loading ?? 1, FACTOR));
  note(issues, variableIssue('bypass', state.bypass ?? 0, SHARE));
  if (temperature !== undefined) note(issues, variableIssue('temperature', temperature, TEMPERATURE));
  for (const openings of [from, to])
    for (const basin in openings)
      note(issues, variableIssue(`opening.${basin}`, openings[basin] ?? Number.NaN, SHARE));
  for (const [name, value] of Object.entries(wear ?? NO_WEAR))
    note(issues, variableIssue(`wear.${name}`, value, FACTOR));
  return issues;
}

const NO_WEAR: NonNullable<PadState['wear']> = {};

function note(issues: Issue[], issue: Issue | undefined): void {
  if (issue) issues.push(issue);
}

function some(issue: Issue | undefined): Issue[] {
  return issue ? [issue] : [];
}

function basinIssues(spec: PadSpec): Issue[] {
  const ids = spec.basins.map((basin) => basin.id);
  const twice = ids.filter((id, i) => ids.indexOf(id) !== i);
  const unknown = (spec.spillways ?? [])
    .flatMap((edge) => [edge.from, edge.to])
    .filter((id) => !ids.includes(id));
  return [
    ...twice.map((id): Issue => ({ code: 'ill-formed', where: `basins.${id}`, reason: 'duplicate' })),
    ...unknown.map(
      (id): Issue => ({ code: 'ill-formed', where: `spillways.${id}`, reason: 'unknown-basin' }),
    ),
    ...spec.basins.flatMap((basin) => some(variableIssue(`basins.${basin.id}.level`, basin.level, HEIGHT))),
  ];
}

function branchIssues(side: string, branches: readonly BasinBranch[], spec: PadSpec): Issue[] {
  if (branches.length === 0) return [{ code: 'ill-formed', where: side, reason: 'no-branch' }];
  return branches.flatMap((branch, i): Issue[] => {
    const where = `${side}.${branch.basin}`;
    const known = spec.basins.some((basin) => basin.id === branch.basin);
    const twice = branches.findIndex((other) => other.basin === branch.basin) !== i;
    return [
      ...(known ? [] : [{ code: 'ill-formed', where, reason: 'unknown-basin' } as const]),
      ...(twice ? [{ code: 'ill-formed', where, reason: 'duplicate' } as const] : []),
      ...lineIssues(where, branch.line),
      ...(branch.port ? lossLawIssues(`${where}.port`, { type: 'k', ...branch.port }) : []),
    ];
  });
}

function bankIssues(bank: HeaterBank): Issue[] {
  const between = bank.heaters.length - 1;
  const headers = [...bank.supplyHeader, ...bank.returnHeader];
  const fits = bank.supplyHeader.length === between && bank.returnHeader.length === between;
  const empty = headers.some((line) => line.length === 0);
  const shape: Issue[] = [];
  if (between < 0) shape.push({ code: 'ill-formed', where: 'bank', reason: 'no-heater' });
  else if (!fits || empty) shape.push({ code: 'ill-formed', where: 'bank', reason: 'header-sections' });
  return [
    ...shape,
    ...headers.flatMap((line, i) => lineIssues(`bank.header.${i}`, line)),
    ...bank.heaters.flatMap(heaterIssues),
  ];
}

function heaterIssues(heater: PadHeater): Issue[] {
  const where = `heaters.${heater.id}`;
  const { least, most } = heater.band;
  const band: Issue[] =
    least >= 0 && most > least
      ? []
      : [{ code: 'contradiction', where: `${where}.band`, reason: 'empty-band' }];
  return [
    ...lossLawIssues(`${where}.loss`, heater.loss),
    ...lineIssues(`${where}.inlet`, heater.inlet),
    ...lineIssues(`${where}.outlet`, heater.outlet),
    ...some(variableIssue(`${where}.elevation`, heater.elevation, HEIGHT)),
    ...band,
  ];
}

function bypassIssues(spec: PadSpec): Issue[] {
  if (spec.bypass === undefined) return [];
  const alone: Issue[] = spec.bank ? [] : [{ code: 'ill-formed', where: 'bypass', reason: 'no-heater' }];
  return [
    ...alone,
    ...valveIssues('bypass.valve', spec.bypass.valve),
    ...lineIssues('bypass', spec.bypass.line),
  ];
}
