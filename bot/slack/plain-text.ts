import { withoutMarks } from '../mention.js';

const CONTROL = /<([@#!]?)([^<>|]*)(?:\|([^<>]*))?>/g;

/**
 * What a person typed, out of the form that Slack sends: entities become letters, links their label, and mentions words
 * that ping nobody. With `botUserId` the mentions of the bot itself are taken out.
 */
export function plainText(escaped: string, botUserId?: string): string {
  return withoutMarks(escaped)
    .replace(CONTROL, (_, sigil: string, target: string, label: string | undefined) => {
      if (sigil === '@') return target === botUserId ? '' : `@${target}`;
      if (sigil === '#') return `#${label || target}`;
      if (sigil === '!') return (label ?? target.split('^')[0] ?? '').replace(/^@/, '');
      return label || target;
    })
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .trim();
}
