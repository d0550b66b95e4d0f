/** Brings the link table into a state from which iteration can start. */
import { compileLaw } from './compile-law.ts';
import type { LinkLaw } from './law.ts';
import { HOLDING, OPEN, REGULATOR, SHUT } from './link-table.ts';
import { lossAtRest, type Scale, startFlow } from './scale.ts';
import type { NetworkState } from './state.ts';

/** Steepness of the trickle through a blocked link, parts of potential scale over flow scale. */
const BLOCKED_VALVE = 1e12;
/** A pump trickles more, so that the pipe between it and a check valve stands at its shut-off head. */
const BLOCKED_PUMP = 1e9;

/**
 * Writes law, one-way rule and starting flow of a link. True when nothing but its tangent changed: same kind of law,
 * same state, same rule; else the links have to be regrouped before the next step.
 */
export function installLaw(net: NetworkState, i: number, law: LinkLaw, scale: Scale): boolean {
  const { links } = net;
  const before = links.code[i]!;
  const ruleBefore = links.oneWay[i]!;
  compileLaw(links, i, law, scale);
  const after = links.code[i]!;
  const steepness = law.type === 'pump' ? BLOCKED_PUMP : BLOCKED_VALVE;
  links.oneWay[i] = law.type === 'pump' || law.type === 'regulator' ? 1 : links.check[i]!;
  links.start[i] = startFlow(law, scale);
  links.backSlope[i] = steepness * (scale.potential / scale.flow);
  links.lossAtRest[i] = lossAtRest(law);
  const turned = setShut(net, i, law);
  const same = before === after && ruleBefore === links.oneWay[i] && !turned;
  if (same) return true;
  // A blocked or holding link whose kind or rule changed starts as one of its new kind.
  const asItWas = links.state[i] === OPEN && after !== REGULATOR;
  if (!turned && !asItWas && links.state[i] !== SHUT) open(net, i);
  return false;
}

/** Shuts or opens a link as caller and law ask; whether that changed anything, so that links have to be regrouped. */
export function setShut(net: NetworkState, i: number, law: LinkLaw): boolean {
  const { state, closed, q } = net.links;
  const shut = closed[i] === 1 || (law.type === 'pump' && law.speed === 0);
  if (shut === (state[i] === SHUT)) return false;
  if (shut) {
    state[i] = SHUT;
    q[i] = 0;
    net.attach(i);
  } else open(net, i);
  return true;
}

/** Every link at its starting flow, every free node at the mean of the held ones. */
export function coldStart(net: NetworkState): void {
  const { links, potential, rows, nodeCount } = net;
  for (let i = 0; i < links.count; i += 1) if (links.state[i] !== SHUT) open(net, i);
  let sum = 0;
  for (let c = rows; c < nodeCount; c += 1) sum += potential[c]!;
  potential.fill(sum / (nodeCount - rows), 0, rows);
}

function open(net: NetworkState, i: number): void {
  const { state, code, q, start } = net.links;
  state[i] = code[i] === REGULATOR ? HOLDING : OPEN;
  q[i] = start[i]!;
  net.attach(i);
}
