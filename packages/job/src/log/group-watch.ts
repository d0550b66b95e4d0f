/** Keeps count of which groups are whole; what belongs to one that is not waits. */
import type { Entry } from './element-operations.ts';
import type { LogFinding } from './findings.ts';
import type { Group } from './names.ts';

interface Progress {
  readonly count: number;
  readonly known: Set<string>;
  readonly unknown: Set<string>;
  readonly entries: Entry[];
}

export class GroupWatch {
  readonly #groups = new Map<string, Progress>();
  readonly #held = new Set<Entry>();

  /** The operations that wait for the rest of their group: not applied, but what they saw stays true. */
  get held(): ReadonlySet<Entry> {
    return this.#held;
  }

  /** Notes an operation that can be applied. Returns the entries set free because their group is now whole. */
  arrive(entry: Entry): readonly Entry[] {
    const { group } = entry;
    if (group.count === 1) return [];
    const progress = this.#progress(entry.operation.group, group);
    const wasWhole = progress.known.size === progress.count;
    progress.known.add(entry.operation.id);
    progress.unknown.delete(entry.operation.id);
    progress.entries.push(entry);
    const isWhole = progress.known.size === progress.count;
    if (!isWhole) this.#held.add(entry);
    if (!isWhole || wasWhole) return [];
    for (const member of progress.entries) this.#held.delete(member);
    return progress.entries;
  }

  /** Notes an operation that is there but cannot be applied by this version. */
  arriveUnknown(name: string, group: Group, id: string): void {
    if (group.count === 1) return;
    const progress = this.#progress(name, group);
    if (!progress.known.has(id)) progress.unknown.add(id);
  }

  findings(): LogFinding[] {
    const findings: LogFinding[] = [];
    for (const [name, { count, known, unknown }] of this.#groups) {
      if (known.size === count) continue;
      const isThere = known.size + unknown.size === count;
      const code = isThere ? 'group-not-understood' : 'incomplete-group';
      findings.push({ code, where: name, ids: [...known, ...unknown].sort() });
    }
    return findings;
  }

  #progress(name: string, group: Group): Progress {
    let progress = this.#groups.get(name);
    if (!progress) {
      progress = { count: group.count, known: new Set(), unknown: new Set(), entries: [] };
      this.#groups.set(name, progress);
    }
    return progress;
  }
}
