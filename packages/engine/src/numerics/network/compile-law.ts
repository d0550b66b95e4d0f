/** Turns a law into the numbers that the inner loop reads. */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import { turbulentStart } from './friction.ts';
import { LAST_REYNOLDS } from './friction-term.ts';
import type { CurveLaw, DarcyLaw, LinkLaw, PowerLaw, PumpLaw, RegulatorLaw } from './law.ts';
import {
  CURVE,
  CUSTOM,
  FRICTION,
  type LinkTable,
  POWER,
  PUMP,
  QUADRATIC,
  REGULATOR,
  STRIDE,
} from './link-table.ts';
import { LAST_FLOW, LAST_TERM } from './power-term.ts';
import type { Scale } from './scale.ts';

/**
 * Below this part of the flow scale a power law is replaced by the straight line from the origin: its slope would
 * go to zero there, and one over it to infinity. What the line changes is of the order of 1e-8 of the flow scale.
 */
const LOW_FLOW = 1e-8;
/** Least droop of a regulator, part of its set value at the flow scale. */
const STIFFEST = 1e-7;

/** Writes the law of link `i` (already checked). */
export function compileLaw(links: LinkTable, i: number, law: LinkLaw, scale: Scale): void {
  switch (law.type) {
    case 'power':
      compilePower(links, i, law, scale);
      break;
    case 'darcy':
      compileFriction(links, i, frictionNumbers(law));
      break;
    case 'friction':
      compileFriction(links, i, { ...law, m: law.m ?? 0 });
      break;
    case 'curve':
      compileCurve(links, i, law);
      break;
    case 'pump':
      compilePump(links, i, law, scale);
      break;
    case 'regulator':
      compileRegulator(links, i, law, scale);
      break;
    case 'custom':
      links.code[i] = CUSTOM;
      links.custom[i] = law;
      break;
  }
}

function compilePower(
  { code, parameters }: LinkTable,
  i: number,
  { r, n, m = 0 }: PowerLaw,
  scale: Scale,
): void {
  const low = LOW_FLOW * scale.flow;
  const at = i * STRIDE;
  code[i] = n === 2 ? QUADRATIC : POWER;
  if (n === 2) {
    parameters[at] = r + m;
    parameters[at + 1] = low;
    parameters[at + 2] = (r + m) * low;
    return;
  }
  parameters[at] = r;
  parameters[at + 1] = n;
  parameters[at + 2] = m;
  parameters[at + 3] = low;
  parameters[at + 4] = r * low ** (n - 1) + m * low;
  parameters[at + LAST_FLOW] = 0;
  parameters[at + LAST_TERM] = 0;
}

interface FrictionNumbers {
  readonly c: number;
  readonly reynoldsPerFlow: number;
  readonly relativeRoughness: number;
  readonly m: number;
}

function frictionNumbers(law: DarcyLaw): FrictionNumbers {
  const area = (Math.PI / 4) * law.diameter ** 2;
  const velocityHead = 1 / (2 * (law.gravity ?? STANDARD_GRAVITY) * area ** 2);
  return {
    c: (velocityHead * law.length) / law.diameter,
    reynoldsPerFlow: law.diameter / (area * law.viscosity),
    relativeRoughness: law.roughness / law.diameter,
    m: (law.k ?? 0) * velocityHead,
  };
}

function compileFriction({ code, parameters }: LinkTable, i: number, law: FrictionNumbers): void {
  const { value, slope } = turbulentStart(law.relativeRoughness);
  const at = i * STRIDE;
  code[i] = FRICTION;
  parameters[at] = law.c;
  parameters[at + 1] = law.reynoldsPerFlow;
  parameters[at + 2] = law.relativeRoughness;
  parameters[at + 3] = law.m;
  parameters[at + 4] = value;
  parameters[at + 5] = slope;
  parameters[at + LAST_REYNOLDS] = 0;
}

function compileCurve(links: LinkTable, i: number, { flows, losses }: CurveLaw): void {
  const mirrored = flows[0]! >= 0;
  const fromOrigin = mirrored && flows[0]! > 0;
  links.code[i] = CURVE;
  links.parameters[i * STRIDE] = mirrored ? 1 : 0;
  if (fromOrigin) join(links, i, { x: [0, ...flows], y: [0, ...losses], byX: 1, byY: 1 });
  else join(links, i, { x: flows, y: losses, byX: 1, byY: 1 });
}

function compilePump(links: LinkTable, i: number, { curve, speed: s }: PumpLaw, scale: Scale): void {
  if (curve.shape === 'points') {
    links.code[i] = CURVE;
    links.parameters[i * STRIDE] = 0;
    join(links, i, { x: curve.flows, y: curve.heads, byX: s, byY: -s * s });
    return;
  }
  const low = LOW_FLOW * scale.flow;
  const b = s === 0 ? 0 : curve.b * s ** (2 - curve.c);
  const { code, parameters } = links;
  const at = i * STRIDE;
  code[i] = PUMP;
  parameters[at] = b;
  parameters[at + 1] = curve.c;
  parameters[at + 2] = curve.a * s * s;
  parameters[at + 3] = low;
  parameters[at + 4] = b * low ** (curve.c - 1);
  parameters[at + LAST_FLOW] = 0;
  parameters[at + LAST_TERM] = 0;
}

function compileRegulator(links: LinkTable, i: number, law: RegulatorLaw, scale: Scale): void {
  const { outlet, open } = law;
  const [flows, potentials] =
    'set' in outlet
      ? [
          [0, scale.flow],
          [outlet.set, outlet.set - (outlet.droop ?? 0) * scale.flow],
        ]
      : [outlet.flows, outlet.potentials];
  const stiffest = (STIFFEST * Math.max(Math.abs(potentials[0]!), scale.potential)) / scale.flow;
  join(links, i, { x: flows, y: potentials, byX: 1, byY: -1 });
  links.code[i] = REGULATOR;
  links.parameters[i * STRIDE] = open;
  links.parameters[i * STRIDE + 1] = stiffest;
}

/** Points to be joined by straight lines, and what their numbers are multiplied by. */
interface Points {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly byX: number;
  readonly byY: number;
}

/** Writes points as x, y and the slope of the line that follows; the last carries none. */
function join(links: LinkTable, i: number, { x, y, byX, byY }: Points): void {
  const size = 3 * x.length;
  const table = links.points[i]!.length === size ? links.points[i]! : new Float64Array(size);
  links.points[i] = table;
  for (let k = 0; k < x.length; k += 1) {
    table[3 * k] = byX * x[k]!;
    table[3 * k + 1] = byY * y[k]!;
    if (k > 0)
      table[3 * k - 1] = (table[3 * k + 1]! - table[3 * k - 2]!) / (table[3 * k]! - table[3 * k - 3]!);
  }
}
