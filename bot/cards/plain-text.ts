import type { Card } from './card.js';
import { LIMITS, shortened } from './limits.js';

/** The whole card as plain text, lead line first: what a notification and a screen reader say. */
export function plainText(card: Card): string {
  const { lines: told, rows = [] } = card.table ?? {};
  const table = told ?? rows.map(([first, ...rest]) => `${first}: ${rest.join(', ')}.`);
  const lines = [
    card.lead,
    ...card.body,
    ...table,
    ...card.facts.map(({ label, text }) => `${label}: ${text}`),
    ...card.steps.map((step, i) => `${i + 1}. ${step.map(({ text }) => text).join('')}`),
    ...card.foot,
    ...(card.sayings.length === 0 ? [] : [`You can say: ${card.sayings.join(', ')}.`]),
  ];
  return shortened(lines.join('\n'), LIMITS.messageText);
}
