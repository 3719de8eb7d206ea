import type { Migration } from 'kysely';
import { first } from './0001-first.js';
import { work } from './0002-work.js';
import { shelf } from './0003-shelf.js';
import { rateCard } from './0005-rate-card.js';
import { benchLog } from './0006-bench-log.js';
import { batch } from './0007-batch.js';
import { reminder } from './0008-reminder.js';
import { share } from './0010-share.js';
import { home } from './0011-home.js';

/** Every migration by name, in order: a static map, so that nothing scans a folder. */
export const migrations: Record<string, Migration> = {
  '0001-first': first,
  '0002-work': work,
  '0003-shelf': shelf,
  '0005-rate-card': rateCard,
  '0006-bench-log': benchLog,
  '0007-batch': batch,
  '0008-reminder': reminder,
  '0010-share': share,
  '0011-home': home,
};
