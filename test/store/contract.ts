import { afterEach, beforeEach } from 'vitest';
import type { Store } from '../../bot/store/ports.js';
import { batchesContract } from './batches.js';
import { benchLogContract } from './bench-log.js';
import { homesContract } from './homes.js';
import { outboxContract } from './outbox.js';
import { profilesContract } from './profiles.js';
import { recordsContract } from './records.js';
import type { Open } from './samples.js';
import { sharesContract } from './shares.js';
import { shelfContract } from './shelf.js';
import { transactionsContract } from './transactions.js';
import { upkeepContract } from './upkeep.js';
import { worksContract } from './works.js';
import { workspacesContract } from './workspaces.js';

/** What every store must do, whatever its database; `open` gives an empty one each time. */
export function storeContract(name: string, open: Open): void {
  let opened: Store;
  beforeEach(async () => {
    opened = await open();
  });
  afterEach(() => opened.close());
  const store = () => opened;

  transactionsContract(name, store);
  recordsContract(name, store);
  profilesContract(name, store);
  worksContract(name, store);
  sharesContract(name, store);
  shelfContract(name, store);
  benchLogContract(name, store);
  batchesContract(name, store);
  workspacesContract(name, store);
  outboxContract(name, store);
  homesContract(name, store);
  upkeepContract(name, store, open);
}
