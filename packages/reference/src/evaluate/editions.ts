/**
 * Editions this project can be asked about, and which one each follows.
 *
 * A rule whose figures were read in one edition is asked under a later one too, until someone has read that: its
 * finding then names the edition it was read in and says *check the book*. No figure is ever carried backwards.
 */
import type { CodeSubject } from './profile.ts';

export interface CodeEdition {
  readonly id: string;
  readonly subject: CodeSubject;
  /** The edition before it, whose rules stand in where it was not read. */
  readonly follows?: string;
}

/** Newest last within a code. */
export const CODE_EDITIONS: readonly CodeEdition[] = [
  { id: '10 CFR 430', subject: 'appliance efficiency' },
  { id: 'IFGC 2015', subject: 'fuel gas' },
  { id: 'IFGC 2018', subject: 'fuel gas', follows: 'IFGC 2015' },
  { id: 'IFGC 2021', subject: 'fuel gas', follows: 'IFGC 2018' },
  { id: 'IECC 2015', subject: 'energy' },
  { id: 'IECC 2018', subject: 'energy', follows: 'IECC 2015' },
  { id: 'IECC 2021', subject: 'energy', follows: 'IECC 2018' },
  { id: 'ISPSC 2021', subject: 'pool and spa' },
  { id: 'B149.1-20', subject: 'fuel gas' },
  { id: 'C22.1-21', subject: 'electrical' },
  { id: 'NEC 2011', subject: 'electrical' },
  { id: 'NEC 2017', subject: 'electrical', follows: 'NEC 2011' },
  { id: 'NEC 2023', subject: 'electrical', follows: 'NEC 2017' },
  { id: 'State boiler laws', subject: 'boiler' },
  { id: 'Title 24 2013', subject: 'energy' },
  { id: 'Title 24 2019', subject: 'energy', follows: 'Title 24 2013' },
  { id: 'Title 24 2022', subject: 'energy', follows: 'Title 24 2019' },
  { id: 'Title 24 2025', subject: 'energy', follows: 'Title 24 2022' },
  { id: 'UMC 2012', subject: 'mechanical' },
  { id: 'UMC 2021', subject: 'mechanical', follows: 'UMC 2012' },
];

export function codeEdition(id: string): CodeEdition | undefined {
  return CODE_EDITIONS.find((one) => one.id === id);
}

/** An edition and those it follows, itself first. An edition that is not listed stands alone. */
export function editionChain(id: string): readonly string[] {
  const chain: string[] = [];
  for (
    let at: string | undefined = id;
    at !== undefined && !chain.includes(at);
    at = codeEdition(at)?.follows
  ) {
    chain.push(at);
  }
  return chain;
}
