/** Whether the parts of a network hang together. */
import type { Issue } from '../../trace/index.ts';
import type { NetworkSpec } from './law.ts';

/** Issues of names, held potentials and demands; empty when the network can be laid out. */
export function specIssues({ nodes, links }: NetworkSpec): Issue[] {
  const names = new Set(nodes.map((node) => node.id));
  const issues: Issue[] = [
    ...repeated(nodes.map((node) => node.id)),
    ...repeated(links.map((link) => link.id)),
  ];
  if (nodes.length === 0) issues.push({ code: 'ill-formed', where: 'nodes', reason: 'empty-network' });
  for (const { id, fixed, demand } of nodes) {
    if (fixed !== undefined && !Number.isFinite(fixed))
      issues.push({ code: 'not-finite', where: id, found: String(fixed) });
    if (demand !== undefined && !Number.isFinite(demand))
      issues.push({ code: 'not-finite', where: id, found: String(demand) });
    if (fixed !== undefined && demand !== undefined && demand !== 0)
      issues.push({ code: 'contradiction', where: id, found: demand, reason: 'demand-at-fixed-node' });
  }
  for (const { id, from, to } of links) {
    for (const end of [from, to])
      if (!names.has(end)) issues.push({ code: 'ill-formed', where: id, found: end, reason: 'unknown-node' });
    if (from === to) issues.push({ code: 'ill-formed', where: id, found: from, reason: 'link-to-itself' });
  }
  return issues;
}

function repeated(ids: readonly string[]): Issue[] {
  const seen = new Set<string>();
  const twice = new Set(ids.filter((id) => seen.size === seen.add(id).size));
  return [...twice].map((id) => ({ code: 'ill-formed', where: id, reason: 'duplicate-id' }));
}

export interface Graph {
  readonly nodeCount: number;
  readonly fixed: Uint8Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** 1 for every node that some path of joining links ties to a fixed node. */
export function heldNodes(
  { nodeCount, fixed, from, to }: Graph,
  joins: (link: number) => boolean,
): Uint8Array {
  const parent = Int32Array.from({ length: nodeCount }, (_, n) => n);
  const root = (n: number): number => {
    let at = n;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!;
      at = parent[at]!;
    }
    return at;
  };
  for (let i = 0; i < from.length; i += 1) if (joins(i)) parent[root(from[i]!)] = root(to[i]!);
  const held = new Uint8Array(nodeCount);
  for (let n = 0; n < nodeCount; n += 1) if (fixed[n]) held[root(n)] = 1;
  return held.map((_, n) => held[root(n)]!);
}
