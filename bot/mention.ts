/** Noncharacters of Unicode, which no text that people exchange holds. */
const [OPENS, CLOSES] = ['\uFDD0', '\uFDD1'];
const MARKED = new RegExp(`${OPENS}([UW][A-Z0-9]+)${CLOSES}`, 'g');

/** Slack's ids of persons. */
export const isSlackUserId = (text: string): boolean => /^[UW][A-Z0-9]+$/.test(text);

/** A person in a sentence who has told no name: Slack shows theirs in place of this. */
export const mentionOf = (slackUserId: string): string => `${OPENS}${slackUserId}${CLOSES}`;

/** A text in its pieces: words, and between them the ids of those mentioned. */
export const withMentions = (text: string): ({ text: string } | { user: string })[] =>
  text
    .split(MARKED)
    .map((part, i) => (i % 2 === 0 ? { text: part } : { user: part }))
    .filter((part) => 'user' in part || part.text !== '');

/** A text with something else in place of each mention. */
export const mentionsAs = (text: string, shown: (slackUserId: string) => string): string =>
  text.replace(MARKED, (_, slackUserId: string) => shown(slackUserId));

/** What was typed, in which nobody may be mentioned. */
export const withoutMarks = (typed: string): string => typed.replaceAll(OPENS, '').replaceAll(CLOSES, '');
