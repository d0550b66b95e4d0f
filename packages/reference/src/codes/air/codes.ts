/** Where the figures of the air line come from. */
import { quantity } from '@firstfire/engine';
import type { Edition } from '../../evaluate/index.ts';

export const { FOOT, INCH } = quantity;

/** The US fuel gas code, as read in NFPA 54-2012 or where the IFGC itself could be read. */
export function ifgc<V>(at: string, values: V): Edition<V> {
  return {
    edition: 'IFGC 2015',
    from: '2014-05-30',
    source: { document: 'International Fuel Gas Code', at, known: 'read in a public copy' },
    values,
  };
}

/** The same, where a table was in part recalled. */
export function ifgcRecalled<V>(at: string, values: V): Edition<V> {
  return {
    edition: 'IFGC 2015',
    from: '2014-05-30',
    source: { document: 'International Fuel Gas Code', at, known: 'from memory' },
    values,
  };
}

/** The Canadian installation code, as quoted by others; its own text was not read. */
export function b149<V>(at: string, values: V): Edition<V> {
  return {
    edition: 'B149.1-20',
    from: '2020-01-01',
    source: { document: 'CSA B149.1', at, known: 'read in a public copy' },
    values,
  };
}

/** The same, where its figures are taken from a table that was in part recalled. */
export function b149Recalled<V>(at: string, values: V): Edition<V> {
  const entry = b149(at, values);
  return { ...entry, source: { ...entry.source, known: 'from memory' } };
}
