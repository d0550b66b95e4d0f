/** From a specification to a network that can be solved. */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import type { NetworkSpec } from './law.ts';
import { lawIssues } from './law-check.ts';
import { Names } from './names.ts';
import { Network } from './network.ts';
import { type Graph, heldNodes, specIssues } from './topology.ts';

/**
 * Lays out a network. Issues, and nothing built, when a name is unknown or used twice, a law or a value is out of
 * range, or a part has no held potential even with all its links open.
 */
export function buildNetwork(spec: NetworkSpec): Result<Network> {
  const names = { nodes: new Names(spec.nodes), links: new Names(spec.links) };
  const issues = specIssues(spec, names);
  for (const link of spec.links) issues.push(...lawIssues(link.id, link.law));
  if (issues.length > 0) return fail(...issues);
  const graph = graphOf(spec, names.nodes);
  const apart = apartIssues(spec, graph);
  return apart.length > 0 ? fail(...apart) : ok(new Network(spec, names, graph));
}

function graphOf({ nodes, links }: NetworkSpec, names: Names): Graph {
  const fixed = new Uint8Array(nodes.length);
  const from = new Int32Array(links.length);
  const to = new Int32Array(links.length);
  for (let n = 0; n < nodes.length; n += 1) fixed[n] = nodes[n]!.fixed === undefined ? 0 : 1;
  for (let i = 0; i < links.length; i += 1) {
    from[i] = names.index(links[i]!.from);
    to[i] = names.index(links[i]!.to);
  }
  return { fixed, from, to };
}

function apartIssues({ nodes }: NetworkSpec, graph: Graph): Issue[] {
  const held = heldNodes(graph, () => true);
  if (!held.includes(0)) return [];
  return nodes.flatMap(({ id }, n) =>
    held[n] ? [] : [{ code: 'ill-formed', where: id, reason: 'cut-off' }],
  );
}
