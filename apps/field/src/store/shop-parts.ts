/** What a shop stands on: the places of a device where work is kept, and who hears of it. */
import type { DeviceStorage } from './device-storage.ts';
import type { Jots } from './jots.ts';
import type { SecondCopy } from './second-copy.ts';
import type { Tabs } from './tabs.ts';

export interface ShopParts {
  readonly storage: DeviceStorage;
  readonly copy: SecondCopy;
  readonly tabs: Tabs;
  readonly jots: Jots;
  readonly cookie: () => string;
}
