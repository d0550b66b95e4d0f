/**
 * Strongly connected components of a directed graph: sets of nodes that all reach each other.
 *
 * Tarjan's algorithm (R. Tarjan, "Depth-first search and linear graph algorithms", 1972), with a stack of its own
 * instead of recursion, because a damaged or hostile log may hold a chain of any length. Time is linear in the edges.
 */
interface Visit {
  readonly node: string;
  readonly index: number;
  low: number;
  edge: number;
  onStack: boolean;
}

/** The components of `next` (node → nodes it points to; every node is a key). */
export function components(next: ReadonlyMap<string, readonly string[]>): string[][] {
  const found: string[][] = [];
  const visits = new Map<string, Visit>();
  const open: Visit[] = [];
  for (const root of next.keys()) {
    if (visits.has(root)) continue;
    const path = [enter(root, visits, open)];
    while (path.length > 0) {
      const visit = path.at(-1)!;
      const child = next.get(visit.node)![visit.edge++];
      if (child === undefined) {
        path.pop();
        const parent = path.at(-1);
        if (parent) parent.low = Math.min(parent.low, visit.low);
        if (visit.low === visit.index) found.push(close(visit, open));
        continue;
      }
      const known = visits.get(child);
      if (!known) path.push(enter(child, visits, open));
      else if (known.onStack) visit.low = Math.min(visit.low, known.index);
    }
  }
  return found;
}

function enter(node: string, visits: Map<string, Visit>, open: Visit[]): Visit {
  const visit = { node, index: visits.size, low: visits.size, edge: 0, onStack: true };
  visits.set(node, visit);
  open.push(visit);
  return visit;
}

function close(root: Visit, open: Visit[]): string[] {
  const component: string[] = [];
  for (;;) {
    const visit = open.pop()!;
    visit.onStack = false;
    component.push(visit.node);
    if (visit === root) return component;
  }
}
