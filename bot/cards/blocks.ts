import { mentionsAs, withMentions } from '../mention.js';
import type { Card, Table } from './card.js';
import { LIMITS, shortened } from './limits.js';

/** Begins the action id of a button that opens a form: such a press needs its trigger. */
export const OPENS = 'form.open.';

export type Block = Record<string, unknown> & { type: string };

/** Numbers and what they count hold together at the end of a line. */
const held = (text: string): string =>
  text.replace(/(\d) (?=\d+\/\d|(?:cm|mm|in|m|yd|g|rows?|needles?|stitches|pairs?|bars?)\b)/g, '$1\u00a0');

export const plain = (text: string, most: number): Block => ({
  type: 'plain_text',
  text: shortened(held(mentionsAs(text, () => 'a maker here')), most),
  emoji: false,
});

export const run = (text: string, bold = false): Block => ({
  type: 'text',
  text: shortened(held(text), LIMITS.plainText),
  ...(bold && { style: { bold } }),
});

/** A run in which makers without a name are mentioned, which only rich text can show. */
export const runs = (text: string, bold = false): Block[] =>
  withMentions(text).map((part) =>
    'text' in part ? run(part.text, bold) : { type: 'user', user_id: part.user, ...(bold && { style: { bold } }) },
  );

export const section = (...elements: Block[]): Block => ({ type: 'rich_text_section', elements });
export const richText = (...elements: Block[]): Block => ({ type: 'rich_text', elements });
export const list = (style: 'bullet' | 'ordered', items: readonly Block[]): Block => ({
  type: 'rich_text_list',
  style,
  elements: items,
});
export const header = (text: string): Block => ({ type: 'header', text: plain(text, LIMITS.headerText) });
export const context = (lines: readonly string[]): Block => ({
  type: 'context',
  elements: lines.slice(0, LIMITS.contextElements).map((line) => plain(line, LIMITS.plainText)),
});

/**
 * The card as Block Kit. What makers typed stands only in rich or plain text, where `*` and `<!channel>` are letters.
 * @param turn id that the buttons carry back, with the index of what they offer
 */
export function blocks(card: Card, turn: string): Block[] {
  const lead = card.kept ? [header(card.lead)] : [richText(section(...runs(card.lead, true)))];
  const body = card.body.length === 0 ? [] : [richText(...card.body.map((line) => section(...runs(line))))];
  const facts = card.facts.map(({ label, text }) => section(run(`${label}:`, true), ...runs(` ${text}`)));
  return [
    ...lead,
    ...body,
    ...(card.table === undefined ? [] : [table(card.table)]),
    ...(facts.length === 0 ? [] : [richText(list('bullet', facts))]),
    ...(card.steps.length === 0
      ? []
      : [
          richText(
            list(
              'ordered',
              card.steps.map((step) => section(...step.map(({ text, key }) => run(text, key)))),
            ),
          ),
        ]),
    ...(card.offers.length === 0 ? [] : [actions(card, turn)]),
    ...foot(card),
  ];
}

function actions(card: Card, turn: string): Block {
  const elements = card.offers.slice(0, LIMITS.actionElements).map((offer, index) => ({
    type: 'button',
    text: plain(offer.button, LIMITS.buttonText),
    action_id: `${offer.request.kind === 'form' ? OPENS : 'pick.'}${index}`,
    value: JSON.stringify({ turn, index }),
    ...(offer.primary && { style: 'primary' }),
    ...(offer.spoken && { accessibility_label: shortened(offer.spoken, LIMITS.buttonText) }),
  }));
  return { type: 'actions', elements };
}

function table({ columns, rows, figures = false }: Table): Block {
  const shown = [columns, ...fitting(rows, columns.length)];
  const most = Math.floor(LIMITS.tableText / (shown.length * columns.length));
  const cell = (text: string) => ({ type: 'raw_text', text: shortened(held(text), most) });
  return {
    type: 'table',
    rows: shown.map((texts) => texts.map(cell)),
    column_settings: columns.map((_, i) => ({ is_wrapped: true, ...(figures && i > 0 && { align: 'right' }) })),
  };
}

/** Rows that have room under the heading; what has none is counted in the last. */
function fitting(rows: Table['rows'], columns: number): Table['rows'] {
  const room = LIMITS.tableRows - 1;
  if (rows.length <= room) return rows;
  const [more, ...rest] = Array.from({ length: columns }, (_, i) =>
    i === 0 ? `and ${rows.length - room + 1} more` : '–',
  );
  return [...rows.slice(0, room - 1), [more ?? '', ...rest]];
}

function foot(card: Card): Block[] {
  const sayings = card.sayings.length === 0 ? [] : [`You can say: ${card.sayings.join(', ')}`];
  const lines = [...card.foot, ...sayings];
  return lines.length === 0 ? [] : [context(lines)];
}
