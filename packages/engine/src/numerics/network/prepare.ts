/** Brings the link table into a state from which iteration can start. */
import { compileLaw } from './compile-law.ts';
import { evaluateLaw } from './evaluate.ts';
import type { LinkLaw } from './law.ts';
import { HOLDING, type LinkTable, OPEN, REGULATOR, SHUT } from './link-table.ts';
import { type Scale, startFlow } from './scale.ts';
import type { NetworkState } from './state.ts';

/** Steepness of the trickle through a blocked link, parts of potential scale over flow scale. */
const BLOCKED_VALVE = 1e12;
/** A pump trickles more, so that the pipe between it and a check valve stands at its shut-off head. */
const BLOCKED_PUMP = 1e9;

/** Writes law, one-way rule and starting flow of a link; whether it became shut or stopped being so. */
export function installLaw(links: LinkTable, i: number, law: LinkLaw, scale: Scale): boolean {
  const wasRegulator = links.code[i] === REGULATOR;
  compileLaw(links, i, law, scale);
  const driven = law.type === 'pump' || law.type === 'regulator';
  if (driven) links.oneWay[i] = 1;
  links.start[i] = startFlow(law, scale);
  links.backSlope[i] = (law.type === 'pump' ? BLOCKED_PUMP : BLOCKED_VALVE) * (scale.potential / scale.flow);
  const turned = setShut(links, i, law);
  if (!turned && wasRegulator !== (links.code[i] === REGULATOR)) open(links, i);
  links.lossAtRest[i] = restLoss(links, i);
  return turned;
}

/** Shuts or opens a link as caller and law ask; whether that changed anything. */
export function setShut(links: LinkTable, i: number, law: LinkLaw): boolean {
  const shut = links.closed[i] === 1 || (law.type === 'pump' && law.speed === 0);
  if (shut === (links.state[i] === SHUT)) return false;
  if (shut) {
    links.state[i] = SHUT;
    links.q[i] = 0;
  } else open(links, i);
  return true;
}

/** Every link at its starting flow, every free node at the mean of the held ones. */
export function coldStart(net: NetworkState): void {
  const { links, potential, fixed, nodeCount } = net;
  for (let i = 0; i < links.count; i += 1) if (links.state[i] !== SHUT) open(links, i);
  let sum = 0;
  let held = 0;
  for (let n = 0; n < nodeCount; n += 1) {
    if (!fixed[n]) continue;
    sum += potential[n]!;
    held += 1;
  }
  for (let n = 0; n < nodeCount; n += 1) if (!fixed[n]) potential[n] = sum / held;
}

function open(links: LinkTable, i: number): void {
  links.state[i] = links.code[i] === REGULATOR ? HOLDING : OPEN;
  links.q[i] = links.start[i]!;
}

/** Loss at no flow; the present flow and what was evaluated for it stay as they are. */
function restLoss(links: LinkTable, i: number): number {
  if (links.state[i] === SHUT || links.code[i] === REGULATOR) return 0;
  const [q, loss, slope] = [links.q[i]!, links.loss[i]!, links.slope[i]!];
  links.q[i] = 0;
  evaluateLaw(links, i, 0);
  const atRest = links.loss[i]!;
  [links.q[i], links.loss[i], links.slope[i]] = [q, loss, slope];
  return atRest;
}
