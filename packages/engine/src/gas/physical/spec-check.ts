/** The issues of a gas system's own numbers, each named by its part: `pipe-3.length`. */
import { type Issue, type Variable, variableIssue } from '../../trace/index.ts';
import type { GasLink, GasPipe, GasSystemSpec } from './system-spec.ts';

interface Bound {
  readonly name: string;
  readonly kind: Variable['kind'];
  readonly min: number;
  readonly max: number;
}

function bound(name: string, kind: Variable['kind'], [min, max]: readonly [number, number]): Bound {
  return { name, kind, min, max };
}

/** Above 1 MPa the constant compression factor no longer holds. */
const GAUGE = [0, 1e6] as const;
const FLOW = [1e-9, 1000] as const;
const DROP = [0, 1e6] as const;

const GRAVITY = bound('specificGravity', 'ratio', [0.3, 2.2]);
const ATMOSPHERE = bound('atmosphere', 'absolute-pressure', [50_000, 115_000]);
const TEMPERATURE = bound('temperature', 'temperature', [220, 340]);
const SUPPLY = bound('pressure', 'pressure', GAUGE);
const LOAD = bound('flow', 'standard-gas-flow', [0, 1000]);
const MANIFOLD = bound('manifoldPressure', 'pressure', [1, 1e5]);
const LENGTH = bound('length', 'length', [1e-3, 1e5]);
const FITTINGS = bound('fittings', 'ratio', [0, 1e5]);
const RISE = bound('rise', 'length', [-500, 500]);
const BORE = bound('insideDiameter', 'diameter', [0.003, 0.7]);
const BADGE = bound('badge', 'standard-gas-flow', FLOW);
const BADGE_DROP = bound('badgeDrop', 'pressure-difference', DROP);
const SET = bound('setPressure', 'pressure', GAUGE);
const CAPACITY = bound('capacity', 'standard-gas-flow', FLOW);
const WIDE_OPEN = bound('wideOpenDrop', 'pressure-difference', [1, DROP[1]]);

/** Adds the issue of a value of a part, if there is one. */
type Check = (part: string, value: number, bound: Bound) => void;

/** All issues of the numbers; empty when the system may be laid out. */
export function gasSpecIssues(spec: GasSystemSpec): Issue[] {
  const { fuel, ambient, supply, loads, links } = spec;
  const issues: Issue[] = [];
  const check: Check = (part, value, { name, kind, min, max }) => {
    if (value >= min && value <= max) return;
    const issue = variableIssue(`${part}.${name}`, value, { symbol: '', kind, min, max });
    if (issue !== undefined) issues.push(issue);
  };
  check('fuel', fuel.specificGravity, GRAVITY);
  check('ambient', ambient.atmosphere, ATMOSPHERE);
  check('ambient', ambient.temperature, TEMPERATURE);
  check('supply', supply.pressure, SUPPLY);
  for (const { id, flow } of loads) check(id, flow, LOAD);
  for (const { id, manifoldPressure } of loads)
    if (manifoldPressure !== undefined) check(id, manifoldPressure, MANIFOLD);
  for (const link of links) checkLink(link, check);
  for (const where of twice(spec)) issues.push({ code: 'ill-formed', where, reason: 'id-twice' });
  return issues;
}

function checkLink(link: GasLink, check: Check): void {
  const { id } = link;
  if (link.type === 'pipe') checkPipe(link, check);
  else if (link.type === 'meter') {
    check(id, link.badge, BADGE);
    check(id, link.badgeDrop, BADGE_DROP);
  } else {
    const { setPressure } = link;
    check(id, setPressure, SET);
    check(id, link.lockUpPressure, bound('lockUpPressure', 'pressure', [setPressure, GAUGE[1]]));
    check(id, link.droop, bound('droop', 'pressure-difference', [0, setPressure]));
    check(id, link.capacity, CAPACITY);
    check(id, link.wideOpenDrop, WIDE_OPEN);
  }
}

function checkPipe({ id, bore, length, fittings = 0, rise = 0 }: GasPipe, check: Check): void {
  check(id, length, LENGTH);
  check(id, fittings, FITTINGS);
  check(id, rise, RISE);
  if (bore.type === 'corrugated') return;
  const { insideDiameter, roughness } = bore;
  check(id, insideDiameter, BORE);
  check(id, roughness, bound('roughness', 'length', [0, insideDiameter / 10]));
}

/** Ids that links and loads have more than once. */
function twice({ links, loads }: GasSystemSpec): ReadonlySet<string> {
  const seen = new Set<string>();
  const again = new Set<string>();
  for (const all of [links, loads])
    for (const { id } of all) {
      if (seen.has(id)) again.add(id);
      seen.add(id);
    }
  return again;
}
