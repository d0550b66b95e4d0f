/** What every way of entering a reading is given. */
import type { Reading } from '@firstfire/job';
import type { ReactNode } from 'react';
import type { FieldAt } from './understood.ts';
import type { Given } from './use-quantity.ts';

export interface EntryForm {
  readonly at: FieldAt;
  readonly before: Reading | undefined;
  readonly label: string;
  /** Shows what it would change, before it is entered. */
  readonly onTry: (given: Given | undefined) => void;
  /** Stores it, if there is anything to store, and goes on. */
  readonly onNext: (given: Given | undefined) => void;
  readonly onPrevious: (() => void) | undefined;
  /** How known, photo, why not. */
  readonly row: ReactNode;
}
