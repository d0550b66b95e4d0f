/** The issues of a gas system's own numbers, each named by its part: `pipe-3.length`. */
import { type Issue, type Variable, variableIssue } from '../../trace/index.ts';
import type { GasLink, GasSystemSpec } from './system-spec.ts';

type Bounds = readonly [number, number];

const LENGTH: Bounds = [1e-3, 1e5];
const BORE: Bounds = [0.003, 0.7];
const FLOW: Bounds = [1e-9, 1000];
const DROP: Bounds = [0, 1e6];
/** Above 1 MPa the constant compression factor no longer holds. */
const GAUGE: Bounds = [0, 1e6];

function check(where: string, value: number, kind: Variable['kind'], [min, max]: Bounds): Issue[] {
  const issue = variableIssue(where, value, { symbol: '', kind, min, max });
  return issue === undefined ? [] : [issue];
}

/** All issues of the numbers; empty when the system may be laid out. */
export function gasSpecIssues(spec: GasSystemSpec): Issue[] {
  const { fuel, ambient, supply, loads, links } = spec;
  return [
    ...check('fuel.specificGravity', fuel.specificGravity, 'ratio', [0.3, 2.2]),
    ...check('ambient.atmosphere', ambient.atmosphere, 'absolute-pressure', [50_000, 115_000]),
    ...check('ambient.temperature', ambient.temperature, 'temperature', [220, 340]),
    ...check('supply.pressure', supply.pressure, 'pressure', GAUGE),
    ...loads.flatMap((load) => check(`${load.id}.flow`, load.flow, 'standard-gas-flow', [0, 1000])),
    ...loads.flatMap(({ id, manifoldPressure }) =>
      manifoldPressure === undefined
        ? []
        : check(`${id}.manifoldPressure`, manifoldPressure, 'pressure', [1, 1e5]),
    ),
    ...links.flatMap(linkIssues),
    ...twice([...links, ...loads].map((one) => one.id)),
  ];
}

function linkIssues(link: GasLink): Issue[] {
  const { id } = link;
  if (link.type === 'pipe') {
    const { bore, fittings = 0, rise = 0 } = link;
    const common = [
      ...check(`${id}.length`, link.length, 'length', LENGTH),
      ...check(`${id}.fittings`, fittings, 'ratio', [0, 1e5]),
      ...check(`${id}.rise`, rise, 'length', [-500, 500]),
    ];
    if (bore.type === 'corrugated') return common;
    const { insideDiameter, roughness } = bore;
    return [
      ...common,
      ...check(`${id}.insideDiameter`, insideDiameter, 'diameter', BORE),
      ...check(`${id}.roughness`, roughness, 'length', [0, insideDiameter / 10]),
    ];
  }
  if (link.type === 'meter')
    return [
      ...check(`${id}.badge`, link.badge, 'standard-gas-flow', FLOW),
      ...check(`${id}.badgeDrop`, link.badgeDrop, 'pressure-difference', DROP),
    ];
  return [
    ...check(`${id}.setPressure`, link.setPressure, 'pressure', GAUGE),
    ...check(`${id}.lockUpPressure`, link.lockUpPressure, 'pressure', [link.setPressure, GAUGE[1]]),
    ...check(`${id}.droop`, link.droop, 'pressure-difference', [0, link.setPressure]),
    ...check(`${id}.capacity`, link.capacity, 'standard-gas-flow', FLOW),
    ...check(`${id}.wideOpenDrop`, link.wideOpenDrop, 'pressure-difference', [1, DROP[1]]),
  ];
}

function twice(ids: readonly string[]): Issue[] {
  const again = ids.filter((id, i) => ids.indexOf(id) !== i);
  return [...new Set(again)].map((where) => ({ code: 'ill-formed', where, reason: 'id-twice' }));
}
