/** Sources that several rules share. */
import type { Edition } from '../evaluate/index.ts';

/** What stands on the equipment itself, or in the instructions that came with it. */
export function byNameplate<V>(values: V): readonly Edition<V>[] {
  return [
    {
      edition: 'any',
      from: '1900-01-01',
      source: { document: 'nameplate or the maker’s instructions', known: 'stated by the maker' },
      values,
    },
  ];
}

/** What the trade does, with no document to point to. */
export function byPractice<V>(values: V): readonly Edition<V>[] {
  return [
    {
      edition: 'any',
      from: '1900-01-01',
      source: { document: 'common practice', known: 'common practice, no source' },
      values,
    },
  ];
}

/** What follows from a law of physics and the readings alone. */
export function byPhysics<V>(values: V): readonly Edition<V>[] {
  return [
    { edition: 'any', from: '1900-01-01', source: { document: 'physical law', known: 'physics' }, values },
  ];
}
