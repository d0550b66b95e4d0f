/** Everything the pages take from the device: the store, who writes, the jobs there are, the sessions open on them. */
import type { Edit, StoredOperation } from '@firstfire/job';
import type { JobSession } from '../session/job-session.ts';
import type { Outbox } from '../session/outbox.ts';
import { PrivateFiles } from './copy-files.ts';
import type { Summary } from './database.ts';
import { DeviceShop } from './device-shop.ts';
import { DeviceStorage } from './device-storage.ts';
import { localJots } from './jots.ts';
import type { Marks } from './marks.ts';
import type { Remembered } from './remembered.ts';
import { freshId } from './replica.ts';
import { SecondCopy } from './second-copy.ts';
import type { Signal } from './signal.ts';
import { Tabs } from './tabs.ts';

export interface Shop {
  readonly storage: DeviceStorage;
  readonly tabs: Tabs;
  readonly copy: SecondCopy;
  /** Changes whenever the list of jobs may have. */
  readonly listed: Signal<readonly Summary[] | undefined>;
  /** What the device remembers beside the jobs. */
  readonly marks: Signal<Marks>;
  /** What the device has lost and remembers having had; undefined where nothing is missing. */
  readonly lost: Signal<Remembered | undefined>;
  /** How many jobs came back from the second copy at this start, in whole or in part. */
  readonly cameBack: Signal<number>;
  /** The session of a job; the same one for every page of it. */
  session(doc: string): Promise<JobSession>;
  /** What a job still has to store. */
  outbox(doc: string): Outbox;
  /** A replica id of one's own in the place of one that somebody else writes as, too. */
  renewReplica(): string;
  /** Writes a new job; gives its document id. Where the device refuses it, the job is in memory. */
  begin(edits: readonly Edit[]): Promise<string>;
  /** Unites operations from a file or an example with what is here; gives how many are new. */
  take(doc: string, operations: readonly StoredOperation[]): Promise<number>;
  /** Every operation of a job, those not yet stored too. */
  operations(doc: string): Promise<readonly StoredOperation[]>;
  refresh(): Promise<void>;
  /** Takes a job out of sight; it is cleared away a month later, and can be brought back until then. */
  remove(doc: string): Promise<void>;
  bringBack(doc: string): Promise<void>;
  /** Notes that a file holds these jobs, so far. */
  exported(counts: Readonly<Record<string, number>>): Promise<void>;
  /** No reminder for a week. */
  quiet(): Promise<void>;
  /**
   * Puts a new database in the place of a damaged one and fills it from the second copy and from what is open; false,
   * with nothing changed, where the second copy cannot be read or holds nothing.
   */
  rebuild(): Promise<boolean>;
  /** Gives up what was lost: nobody is told of it again. */
  forgetLost(): Promise<void>;
}

export function openShop(): Shop {
  const shop = new DeviceShop({
    storage: new DeviceStorage(),
    copy: new SecondCopy(new PrivateFiles()),
    tabs: new Tabs(),
    jots: localJots(freshId('t')),
    cookie: () => document.cookie,
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void shop.lookAgain();
  });
  return shop;
}
