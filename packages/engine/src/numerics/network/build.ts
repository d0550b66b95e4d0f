/** From a specification to a network that can be solved. */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import type { NetworkSpec } from './law.ts';
import { lawIssues } from './law-check.ts';
import { Network } from './network.ts';
import { heldNodes, specIssues } from './topology.ts';

/**
 * Lays out a network. Issues, and nothing built, when a name is unknown or used twice, a law or a value is out of
 * range, or a part has no held potential even with all its links open.
 */
export function buildNetwork(spec: NetworkSpec): Result<Network> {
  const issues = [...specIssues(spec), ...spec.links.flatMap((link) => lawIssues(link.id, link.law))];
  if (issues.length > 0) return fail(...issues);
  const apart = apartIssues(spec);
  return apart.length > 0 ? fail(...apart) : ok(new Network(spec));
}

function apartIssues({ nodes, links }: NetworkSpec): Issue[] {
  const at = new Map(nodes.map((node, n) => [node.id, n]));
  const held = heldNodes(
    {
      nodeCount: nodes.length,
      fixed: Uint8Array.from(nodes, (node) => (node.fixed === undefined ? 0 : 1)),
      from: Int32Array.from(links, (link) => at.get(link.from)!),
      to: Int32Array.from(links, (link) => at.get(link.to)!),
    },
    () => true,
  );
  return nodes.flatMap(({ id }, n) =>
    held[n] ? [] : [{ code: 'ill-formed', where: id, reason: 'cut-off' }],
  );
}
