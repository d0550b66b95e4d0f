/** Entries of the electrical codes, by what was read of each. */
import type { Edition } from '../../evaluate/index.ts';

type Known = Edition<unknown>['source']['known'];

/** A section of the code of 2011, as the 2013 California Electrical Code prints it. */
export function nec2011<V>(at: string, values: V, known: Known = 'read in a public copy'): Edition<V> {
  return {
    edition: 'NEC 2011',
    from: '2010-08-25',
    source: { document: 'National Electrical Code 2011', at, known },
    values,
  };
}

export function nec2017<V>(at: string, values: V, known: Known = 'read in a public copy'): Edition<V> {
  return {
    edition: 'NEC 2017',
    from: '2016-08-24',
    source: { document: 'National Electrical Code 2017', at, known },
    values,
  };
}

export function nec2023<V>(at: string, values: V, known: Known = 'read in a public copy'): Edition<V> {
  return {
    edition: 'NEC 2023',
    from: '2022-08-31',
    source: { document: 'National Electrical Code 2023', at, known },
    values,
  };
}

/** A rule of the Canadian code; only section 68 could be read, and that as others quote it. */
export function c22<V>(at: string, values: V, known: Known = 'from memory'): Edition<V> {
  return {
    edition: 'C22.1-21',
    from: '2021-03-01',
    source: { document: 'Canadian Electrical Code, C22.1', at, known },
    values,
  };
}
