/** What is wrong with a law before it is used; empty when nothing is. */
import type { Issue } from '../../trace/index.ts';
import type { LinkLaw, PumpLaw, RegulatorLaw } from './law.ts';

interface Bound {
  readonly name: string;
  readonly value: number;
  readonly min: number;
  readonly max?: number;
}

/** Issues of one law; `where` is the id of its link. */
export function lawIssues(where: string, law: LinkLaw): readonly Issue[] {
  // Asked of every link and each time a valve is turned, so that the usual answer costs nothing.
  if (isPlain(law)) return NONE;
  switch (law.type) {
    case 'power':
      return numbers(where, [
        { name: 'r', value: law.r, min: 0 },
        { name: 'n', value: law.n, min: 0.5, max: 5 },
        { name: 'm', value: law.m ?? 0, min: 0 },
      ]);
    case 'darcy':
      return numbers(where, [
        { name: 'length', value: law.length, min: 0 },
        { name: 'diameter', value: law.diameter, min: 1e-6 },
        { name: 'roughness', value: law.roughness, min: 0, max: 0.1 * law.diameter },
        { name: 'viscosity', value: law.viscosity, min: 1e-12 },
        { name: 'k', value: law.k ?? 0, min: 0 },
        { name: 'gravity', value: law.gravity ?? 1, min: 1e-6 },
      ]);
    case 'friction':
      return numbers(where, [
        { name: 'c', value: law.c, min: 0 },
        { name: 'reynoldsPerFlow', value: law.reynoldsPerFlow, min: 1e-12 },
        { name: 'relativeRoughness', value: law.relativeRoughness, min: 0, max: 0.1 },
        { name: 'm', value: law.m ?? 0, min: 0 },
      ]);
    case 'curve':
      return curveIssues(where, law.flows, law.losses);
    case 'pump':
      return pumpIssues(where, law);
    case 'regulator':
      return regulatorIssues(where, law);
    case 'custom':
      return numbers(where, [{ name: 'expectedFlow', value: law.expectedFlow ?? 0, min: -Number.MAX_VALUE }]);
  }
}

const NONE: readonly Issue[] = [];

/** Whether a law of plain numbers has them all in range; false of any other, which is looked at more closely. */
function isPlain(law: LinkLaw): boolean {
  if (law.type === 'power') {
    const { r, n, m = 0 } = law;
    return r >= 0 && m >= 0 && r + m < Infinity && n >= 0.5 && n <= 5;
  }
  if (law.type === 'darcy') {
    const { length, diameter, roughness, viscosity, k = 0, gravity = 1 } = law;
    const sizes = length >= 0 && diameter >= 1e-6 && roughness >= 0 && roughness <= 0.1 * diameter && k >= 0;
    return (
      sizes && viscosity >= 1e-12 && gravity >= 1e-6 && length + diameter + k + viscosity + gravity < Infinity
    );
  }
  if (law.type !== 'friction') return false;
  const { c, reynoldsPerFlow, relativeRoughness, m = 0 } = law;
  const losses = c >= 0 && m >= 0 && c + m < Infinity;
  return (
    losses &&
    reynoldsPerFlow >= 1e-12 &&
    reynoldsPerFlow < Infinity &&
    relativeRoughness >= 0 &&
    relativeRoughness <= 0.1
  );
}

/** The same for a law that takes the place of one that was found good: a pump only turned faster keeps its curve. */
export function changeIssues(where: string, before: LinkLaw, law: LinkLaw): readonly Issue[] {
  const turned = law.type === 'pump' && before.type === 'pump' && law.curve === before.curve;
  return turned ? speedIssues(where, law) : lawIssues(where, law);
}

function speedIssues(where: string, { speed }: PumpLaw): readonly Issue[] {
  if (speed >= 0 && speed <= FASTEST) return NONE;
  return numbers(where, [{ name: 'speed', value: speed, min: 0, max: FASTEST }]);
}

const FASTEST = 10;

function numbers(where: string, bounds: readonly Bound[]): readonly Issue[] {
  if (bounds.every(isInside)) return NONE;
  return bounds.flatMap((bound): Issue[] => (isInside(bound) ? [] : [boundIssue(where, bound)]));
}

function isInside({ value, min, max = Number.MAX_VALUE }: Bound): boolean {
  return value >= min && value <= max;
}

function boundIssue(where: string, { name, value, min, max }: Bound): Issue {
  const at = `${where}.${name}`;
  if (!Number.isFinite(value)) return { code: 'not-finite', where: at, found: String(value) };
  return { code: 'out-of-range', where: at, found: value, min, ...(max === undefined ? {} : { max }) };
}

function curveIssues(where: string, flows: readonly number[], losses: readonly number[]): Issue[] {
  const issues = pointIssues(where, flows, losses);
  if (issues.length > 0) return issues;
  if (!never(losses, (before, after) => after < before))
    return [{ code: 'contradiction', where, reason: 'loss-curve-falls' }];
  const mirrored = flows[0]! >= 0;
  const throughOrigin = flows[0]! > 0 ? losses[0]! >= 0 : losses[0] === 0;
  return mirrored && !throughOrigin
    ? [{ code: 'contradiction', where, reason: 'loss-curve-misses-origin' }]
    : [];
}

function pumpIssues(where: string, law: PumpLaw): Issue[] {
  const speed = speedIssues(where, law);
  const { curve } = law;
  if (curve.shape === 'power')
    return [
      ...speed,
      ...numbers(where, [
        { name: 'a', value: curve.a, min: 0 },
        { name: 'b', value: curve.b, min: Number.MIN_VALUE },
        { name: 'c', value: curve.c, min: 0.1, max: 20 },
      ]),
    ];
  const issues = [...speed, ...pointIssues(where, curve.flows, curve.heads)];
  if (issues.length > 0) return issues;
  if (curve.flows[0]! < 0) return [{ code: 'out-of-range', where, found: curve.flows[0]!, min: 0 }];
  return never(curve.heads, (before, after) => after > before)
    ? []
    : [{ code: 'contradiction', where, reason: 'pump-curve-rises' }];
}

function regulatorIssues(where: string, law: RegulatorLaw): Issue[] {
  const open = numbers(where, [{ name: 'open', value: law.open, min: 0 }]);
  if ('set' in law.outlet) {
    const { set, droop = 0 } = law.outlet;
    return [
      ...open,
      ...numbers(where, [
        { name: 'set', value: set, min: -Number.MAX_VALUE },
        { name: 'droop', value: droop, min: 0 },
      ]),
    ];
  }
  const { flows, potentials } = law.outlet;
  const issues = [...open, ...pointIssues(where, flows, potentials)];
  if (issues.length > 0) return issues;
  return never(potentials, (before, after) => after > before)
    ? []
    : [{ code: 'contradiction', where, reason: 'outlet-curve-rises' }];
}

function pointIssues(where: string, xs: readonly number[], ys: readonly number[]): Issue[] {
  if (xs.length !== ys.length || xs.length < 2)
    return [{ code: 'ill-formed', where, found: xs.length, min: 2, reason: 'curve-points' }];
  if (![...xs, ...ys].every(Number.isFinite)) return [{ code: 'not-finite', where }];
  return never(xs, (before, after) => after <= before)
    ? []
    : [{ code: 'contradiction', where, reason: 'curve-flows-not-rising' }];
}

function never(values: readonly number[], bad: (before: number, after: number) => boolean): boolean {
  return values.every((value, i) => i === 0 || !bad(values[i - 1]!, value));
}
