/** The operations of one element and what each of them says it saw of the others. */
import type { Inspected } from './check-operation.ts';
import { compareStamps } from './compare.ts';
import { components } from './components.ts';
import type { LogFinding } from './findings.ts';
import { formatTarget } from './names.ts';

/** An operation known to this version, with its target read. */
export type Entry = Extract<Inspected, { state: 'known' }>;

/** What stands under one id: one operation, or several where one id has several contents. */
export interface Same {
  readonly entries: Entry[];
  /** The fields they set; undefined for the element as a whole. */
  readonly fields: Set<string | undefined>;
  latest: Entry;
}

/** What the operations of one element saw of each other, and what was wrong with what they claim. */
export interface Seen {
  readonly byId: ReadonlyMap<string, Same>;
  /** Ids each operation saw, only those that count. */
  readonly edges: ReadonlyMap<Entry, readonly string[]>;
  readonly findings: readonly LogFinding[];
}

/** Nobody saw anything of another: so it is for most elements of a survey. */
const NOTHING_SEEN: Seen = { byId: new Map(), edges: new Map(), findings: [] };

/** Reads `replaces` of every operation; `isKnown` tells whether an id stands anywhere in the log. */
export function readSeen(entries: readonly Entry[], isKnown: (id: string) => boolean): Seen {
  if (entries.every((entry) => entry.operation.replaces.length === 0)) return NOTHING_SEEN;
  const byId = indexById(entries);
  const findings: LogFinding[] = [];
  const edges = new Map<Entry, readonly string[]>();
  let suspicious = false;
  for (const entry of entries) {
    if (entry.operation.replaces.length === 0) continue;
    const seen = edgesOf(entry, { byId, isKnown, findings });
    edges.set(entry, seen);
    suspicious ||= seen.some((id) => isLater(byId.get(id)!.latest, entry));
  }
  return suspicious ? withoutCycles({ byId, edges, findings }) : { byId, edges, findings };
}

function indexById(entries: readonly Entry[]): Map<string, Same> {
  const byId = new Map<string, Same>();
  for (const entry of entries) {
    const same = byId.get(entry.operation.id);
    if (!same) {
      byId.set(entry.operation.id, {
        entries: [entry],
        fields: new Set([entry.target.field]),
        latest: entry,
      });
      continue;
    }
    same.entries.push(entry);
    same.fields.add(entry.target.field);
    if (compareStamps(entry.operation, same.latest.operation) > 0) same.latest = entry;
  }
  return byId;
}

/** Only an operation that saw one standing after itself in the order of clocks can be part of a cycle. */
function isLater(other: Entry, entry: Entry): boolean {
  return compareStamps(other.operation, entry.operation) >= 0;
}

interface EdgeContext {
  readonly byId: ReadonlyMap<string, Same>;
  readonly isKnown: (id: string) => boolean;
  readonly findings: LogFinding[];
}

/** A field's value replaces values of that field; what is said of the element as a whole replaces anything on it. */
function edgesOf(entry: Entry, context: EdgeContext): string[] {
  const { field } = entry.target;
  const counted: string[] = [];
  for (const id of entry.operation.replaces) {
    const here = context.byId.get(id);
    if (here && (field === undefined || here.fields.has(field))) counted.push(id);
    else {
      const code = here || context.isKnown(id) ? 'replaces-elsewhere' : 'dangling-replaces';
      context.findings.push({ code, where: entry.operation.target, ids: [entry.operation.id, id] });
    }
  }
  return counted;
}

/** Drops what operations of one cycle claim to have seen of each other, and says so. */
function withoutCycles(seen: Seen): Seen {
  const cycleOf = findCycles(seen);
  if (cycleOf.size === 0) return seen;
  const edges = new Map<Entry, readonly string[]>();
  for (const [entry, ids] of seen.edges) {
    const cycle = cycleOf.get(entry.operation.id);
    edges.set(entry, cycle === undefined ? ids : ids.filter((id) => cycleOf.get(id) !== cycle));
  }
  const findings = [...seen.findings];
  for (const cycle of new Set(cycleOf.values())) {
    const { collection, element } = seen.byId.get(cycle[0]!)!.latest.target;
    const where = formatTarget({ collection, element });
    findings.push({ code: 'cycle-in-replaces', where, ids: cycle });
  }
  return { byId: seen.byId, edges, findings };
}

/** Id → the cycle it is part of, as its sorted ids (one array a cycle). */
function findCycles(seen: Seen): Map<string, readonly string[]> {
  const next = new Map<string, string[]>();
  for (const id of seen.byId.keys()) next.set(id, []);
  for (const [entry, ids] of seen.edges) {
    const list = next.get(entry.operation.id)!;
    for (const id of ids) list.push(id);
  }
  const cycles = new Map<string, readonly string[]>();
  for (const component of components(next)) {
    const [only] = component;
    const isCycle = component.length > 1 || next.get(only!)!.includes(only!);
    if (!isCycle) continue;
    component.sort();
    for (const id of component) cycles.set(id, component);
  }
  return cycles;
}
