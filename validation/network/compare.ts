/** Turns two solutions of one network into cases. */
import type { Case } from '../suite.ts';
import type { Solved } from './epanet-run.ts';

/** One case a link: theirs is the published figure, gpm. */
export function flowCases(id: string, theirs: Solved, ours: () => Solved): Case[] {
  return casesOf(id, theirs.flows, () => ours().flows);
}

/** One case a node, ft; reservoirs are given and no case. */
export function headCases(id: string, theirs: Solved, ours: () => Solved): Case[] {
  return casesOf(id, theirs.heads, () => ours().heads);
}

type Values = ReadonlyMap<string, number>;

function casesOf(id: string, theirs: Values, ours: () => Values): Case[] {
  return [...theirs].map(([name, published]) => ({
    id: `${id} ${name}`,
    published,
    computed: () => ours().get(name) ?? Number.NaN,
  }));
}

/** A value made once, when it is first asked for. */
export function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** A solution without the nodes whose head is given. */
export function withoutReservoirs(solved: Solved, reservoirs: Readonly<Record<string, number>>): Solved {
  return { ...solved, heads: new Map([...solved.heads].filter(([id]) => !(id in reservoirs))) };
}
