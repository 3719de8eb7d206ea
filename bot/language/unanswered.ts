import type { Meaning, Request } from '../request.js';
import { shortRequest } from './readers/short.js';
import type { Sheet } from './sheet.js';

/** Said beside a request as one speaks, and no request there. */
const COURTESY: readonly Request['kind'][] = ['help', 'thanks', 'drop'];
/** Parts longer than this are no such request. */
const MOST_WORDS = 8;
const JOINT = /[,.;?!\n]\s*(?:(?:and|then|but|also)\s+)*|\s(?:and|then|&|plus)\s(?:then\s)?/giu;

/**
 * Requests that stand in a message beside others, word for word as they are understood alone, of which no word was
 * used: they are named, so that none is lost.
 */
export function unanswered(sheet: Sheet, meanings: readonly Meaning[]): string[] {
  if (meanings.some(({ kind }) => kind === 'unread')) return [];
  return partsOf(sheet.text).flatMap(({ text, start, end }) => {
    if (text.split(/\s+/).length > MOST_WORDS || text.length === sheet.text.length) return [];
    const isUsed = sheet.tokens.some(
      (token, i) => token.start < end && token.end > start && sheet.uses[i] !== undefined,
    );
    const kind = isUsed ? undefined : shortRequest(text)?.kind;
    const isLost = kind !== undefined && !COURTESY.includes(kind) && meanings.every((one) => one.kind !== kind);
    return isLost ? [text] : [];
  });
}

type Part = { text: string; start: number; end: number };

/** The stretches of a text between commas, stops and joints. */
function partsOf(text: string): Part[] {
  const joints = [...text.matchAll(JOINT)].map(({ index, 0: joint }) => ({ from: index, to: index + joint.length }));
  return [{ from: 0, to: 0 }, ...joints].flatMap(({ to: start }, k) => {
    const end = joints[k]?.from ?? text.length;
    const part = text.slice(start, end).trim();
    return part === '' ? [] : [{ text: part, start, end }];
  });
}
