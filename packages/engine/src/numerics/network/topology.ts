/** Whether the parts of a network hang together. */
import type { Issue } from '../../trace/index.ts';
import type { LinkSpec, NetworkSpec, NodeSpec } from './law.ts';
import type { Names } from './names.ts';

/** Ids of the nodes and links of a specification. */
export interface NetworkNames {
  readonly nodes: Names;
  readonly links: Names;
}

/** Issues of names, held potentials and demands; empty when the network can be laid out. */
export function specIssues({ nodes, links }: NetworkSpec, names: NetworkNames): Issue[] {
  const issues: Issue[] = [...repeated(names.nodes), ...repeated(names.links)];
  if (nodes.length === 0) issues.push({ code: 'ill-formed', where: 'nodes', reason: 'empty-network' });
  for (const node of nodes) noteNode(node, issues);
  for (const link of links) noteLink(link, names.nodes, issues);
  return issues;
}

function repeated({ repeated: ids }: Names): Issue[] {
  return ids.map((id) => ({ code: 'ill-formed', where: id, reason: 'duplicate-id' }));
}

function noteNode({ id, fixed, demand }: NodeSpec, issues: Issue[]): void {
  if (fixed !== undefined && !Number.isFinite(fixed))
    issues.push({ code: 'not-finite', where: id, found: String(fixed) });
  if (demand !== undefined && !Number.isFinite(demand))
    issues.push({ code: 'not-finite', where: id, found: String(demand) });
  if (fixed !== undefined && demand !== undefined && demand !== 0)
    issues.push({ code: 'contradiction', where: id, found: demand, reason: 'demand-at-fixed-node' });
}

function noteLink({ id, from, to }: LinkSpec, names: Names, issues: Issue[]): void {
  if (!names.has(from)) issues.push({ code: 'ill-formed', where: id, found: from, reason: 'unknown-node' });
  if (!names.has(to)) issues.push({ code: 'ill-formed', where: id, found: to, reason: 'unknown-node' });
  if (from === to) issues.push({ code: 'ill-formed', where: id, found: from, reason: 'link-to-itself' });
}

export interface Graph {
  readonly fixed: Uint8Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** 1 for every node that some path of joining links ties to a fixed node. */
export function heldNodes({ fixed, from, to }: Graph, joins: (link: number) => boolean): Uint8Array {
  const nodes = fixed.length;
  const parent = new Int32Array(nodes);
  for (let n = 0; n < nodes; n += 1) parent[n] = n;
  for (let i = 0; i < from.length; i += 1)
    if (joins(i)) parent[rootOf(parent, from[i]!)] = rootOf(parent, to[i]!);
  const rootHeld = new Uint8Array(nodes);
  for (let n = 0; n < nodes; n += 1) if (fixed[n]) rootHeld[rootOf(parent, n)] = 1;
  const held = new Uint8Array(nodes);
  for (let n = 0; n < nodes; n += 1) held[n] = rootHeld[rootOf(parent, n)]!;
  return held;
}

/** Halves the way on the way. */
function rootOf(parent: Int32Array, node: number): number {
  let at = node;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at]!]!;
    at = parent[at]!;
  }
  return at;
}
