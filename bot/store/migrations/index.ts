import type { Migration } from 'kysely';
import { first } from './0001-first.js';

/** Every migration by name, in order: a static map, so that nothing scans a folder. */
export const migrations: Record<string, Migration> = { '0001-first': first };
