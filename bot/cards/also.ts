import type { Printing } from '../../core/index.js';
import type { Reply } from '../reply.js';
import type { Card } from './card.js';
import { planInBrief } from './plan.js';
import { sizesInBrief } from './sizes.js';

/** Answers that are a list: told in their rows, of which so many are brief. */
const LISTS: readonly Reply['kind'][] = ['gauges', 'pieces', 'rates', 'shelf', 'machines'];
const MOST_ROWS = 5;

/** An answer before the one that leads, in a few sentences: what it says, took for granted and left out. */
export function inBrief(reply: Reply, own: () => Card, printing: Printing): string {
  if (reply.kind === 'plan') return planInBrief(reply, printing);
  if (reply.kind === 'sizes') return sizesInBrief(reply);
  const { lead, body, table, facts } = own();
  const rows = LISTS.includes(reply.kind)
    ? (table?.lines ?? (table?.rows ?? []).map(([first, ...rest]) => `${first}: ${rest.join(', ')}.`))
    : [];
  const told = facts.map(({ label, text }) => `${label}: ${text}`);
  return [ended(lead), ...body, ...rows.slice(0, MOST_ROWS), ...told].join(' ');
}

const ended = (line: string): string => (/[.?]$/.test(line) ? line : `${line}.`);
