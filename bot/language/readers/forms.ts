import type { FormId, Request } from '../../request.js';

const NAMES: [RegExp, FormId][] = [
  [/^(?:gauge|tension|swatch)$/, 'gauge'],
  [/^(?:plan|planning|piece|rows|size)$/, 'plan'],
  [/^(?:measure|measuring|measurement|reading)$/, 'reading'],
  [/^(?:lost count|count|counter|counters)$/, 'lost_count'],
  [/^(?:rate card|rates?|costs?|prices?)$/, 'rates'],
  [/^(?:share|sharing)$/, 'share'],
];
const FORM =
  /^(?:(?:open|show|give me|fill in|fill out|use) )?(?:(?:the|a|me|my) )?(?:(?<of>[a-z ]+) )?form(?: please)?$/;

/** `form`, `gauge form`, `fill in the plan form`: no other words than these. */
export function formAsked(bare: string): Request | undefined {
  const match = FORM.exec(bare);
  if (match === null) return undefined;
  const of = match.groups?.of;
  if (of === undefined) return { kind: 'form' };
  const form = NAMES.find(([name]) => name.test(of))?.[1];
  return form && { kind: 'form', form };
}
