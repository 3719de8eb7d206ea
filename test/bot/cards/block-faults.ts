import type { Block } from '../../../bot/cards/blocks.js';

/** Limits of Block Kit, transcribed anew from its reference so that a slip in the bot's own list is seen. */
const MOST = { blocks: 50, header: 150, plain: 3000, button: 75, value: 2000, id: 255, actions: 25, context: 10 };
const TABLE = { rows: 100, columns: 20, characters: 10_000 };
const KINDS = ['header', 'rich_text', 'table', 'actions', 'context'];

type Node = Record<string, unknown>;
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** Every object inside a value, itself included. */
function nodes(value: unknown): Node[] {
  if (Array.isArray(value)) return value.flatMap(nodes);
  return isNode(value) ? [value, ...Object.values(value).flatMap(nodes)] : [];
}

const list = (value: unknown): Node[] => (Array.isArray(value) ? value.filter(isNode) : []);
const textOf = (value: unknown): string => (isNode(value) ? String(value.text) : '');

/** Blocks of a page on Home. */
export const MOST_ON_HOME = 100;

/** What the platform would refuse of blocks, those of a message unless more are allowed, and text that it would take for markup. */
export function blockFaults(blocks: readonly Block[], mostBlocks = MOST.blocks): string[] {
  const faults: string[] = [];
  const check = (isRight: boolean, fault: string): void => void (isRight || faults.push(fault));
  check(blocks.length >= 1 && blocks.length <= mostBlocks, `${blocks.length} blocks`);
  check(blocks.filter(({ type }) => type === 'table').length <= 1, 'more than one table');
  for (const node of nodes(blocks)) {
    check(node.type !== 'mrkdwn' && node.type !== 'section' && node.emoji !== true, `markup in ${node.type}`);
    if (!['text', 'plain_text', 'raw_text'].includes(String(node.type))) continue;
    const text = String(node.text);
    check(text.length >= 1 && text.length <= MOST.plain, `${text.length} characters in ${node.type}`);
  }
  for (const block of blocks) {
    check(KINDS.includes(block.type), `a block of type ${block.type}`);
    if (block.type === 'header') check(textOf(block.text).length <= MOST.header, 'header too long');
    if (block.type === 'context') check(list(block.elements).length <= MOST.context, 'too many context elements');
    if (block.type === 'actions') faults.push(...buttonFaults(list(block.elements)));
    if (block.type === 'table') faults.push(...tableFaults(block.rows as Node[][]));
    if (block.type !== 'table')
      check(
        block.rows === undefined && nodes(block.elements).length > 0 !== (block.type === 'header'),
        `empty ${block.type}`,
      );
  }
  return faults;
}

function buttonFaults(buttons: Node[]): string[] {
  const ids = buttons.map(({ action_id }) => String(action_id));
  const primary = buttons.filter(({ style }) => style === 'primary').length;
  return [
    ...(buttons.length > MOST.actions ? ['too many buttons'] : []),
    ...(new Set(ids).size < ids.length || ids.some((id) => id.length > MOST.id) ? ['bad action ids'] : []),
    ...(primary > 1 ? ['more than one primary button'] : []),
    ...buttons.flatMap(({ text, value, accessibility_label = '' }) => [
      ...(textOf(text).length > MOST.button || String(accessibility_label).length > MOST.button ? ['long button'] : []),
      ...(String(value).length > MOST.value ? ['long value'] : []),
    ]),
  ];
}

function tableFaults(rows: readonly (readonly Node[])[]): string[] {
  const characters = rows.flat().reduce((sum, { text }) => sum + String(text).length, 0);
  return [
    ...(rows.length > TABLE.rows ? [`${rows.length} rows`] : []),
    ...(rows.some((row) => row.length > TABLE.columns || row.length !== rows[0]?.length) ? ['uneven table'] : []),
    ...(characters > TABLE.characters ? [`${characters} characters in a table`] : []),
  ];
}

/** Limits of views, transcribed anew from the reference. */
const VIEW = { blocks: 100, title: 24, metadata: 3000, hint: 2000, label: 2000, options: 100, radios: 10, option: 75 };

/** What the platform would refuse of a modal view, or show otherwise than meant. */
export function viewFaults(view: Node): string[] {
  const faults: string[] = [];
  const check = (isRight: boolean, fault: string): void => void (isRight || faults.push(fault));
  const blocks = list(view.blocks);
  const ids = blocks.filter(({ type }) => type === 'input').map(({ block_id }) => String(block_id));
  check(ids.length >= 1, 'nothing to fill in');
  check(view.type === 'modal' && String(view.callback_id).length <= MOST.id, 'no modal');
  check(blocks.length >= 1 && blocks.length <= VIEW.blocks, `${blocks.length} blocks`);
  check(new Set(ids).size === ids.length && ids.every((id) => id.length >= 1 && id.length <= MOST.id), 'bad block ids');
  check(String(view.private_metadata).length <= VIEW.metadata, 'metadata too long');
  check(JSON.stringify(view).length <= 250_000, 'view too large');
  for (const part of [view.title, view.submit, view.close])
    check(textOf(part).length >= 1 && textOf(part).length <= VIEW.title, `title or button ${textOf(part)}`);
  for (const node of nodes(view)) {
    if (node.type !== 'plain_text') continue;
    check(textOf(node).length >= 1 && node.emoji === false, 'empty text, or emoji');
  }
  for (const { type, label, hint, element } of blocks) {
    if (type === 'context') continue;
    check(type === 'input' && textOf(label).length <= VIEW.label, 'label');
    check(hint === undefined || textOf(hint).length <= VIEW.hint, 'hint');
    faults.push(...(isNode(element) ? elementFaults(element) : ['no element']));
  }
  check(nodes(view).filter(({ focus_on_load }) => focus_on_load === true).length <= 1, 'more than one focus');
  return faults;
}

function elementFaults({
  type,
  options,
  initial_option,
  initial_value = '',
  max_length,
  initial_users,
}: Node): string[] {
  if (type === 'multi_users_select')
    return Array.isArray(initial_users) && initial_users.length === 0 ? ['no users'] : [];
  if (type === 'plain_text_input')
    return String(initial_value).length <= Number(max_length) && Number(max_length) <= MOST.plain ? [] : ['long value'];
  const all = list(options);
  const values = all.map(({ value }) => String(value));
  return [
    ...(all.length >= 1 && all.length <= (type === 'radio_buttons' ? VIEW.radios : VIEW.options) ? [] : ['options']),
    ...(new Set(values).size === values.length ? [] : ['options alike']),
    ...all.flatMap(({ text, value, description }) =>
      [textOf(text), String(value), isNode(description) ? textOf(description) : '-'].every(
        (one) => one.length >= 1 && one.length <= VIEW.option,
      )
        ? []
        : [`option ${value}`],
    ),
    ...(initial_option === undefined || all.some((one) => JSON.stringify(one) === JSON.stringify(initial_option))
      ? []
      : ['initial option is none of them']),
  ];
}

/** All text that blocks show beside their buttons, in order. */
export const textsOf = (blocks: readonly Block[]): string[] =>
  blocks
    .filter(({ type }) => type !== 'actions')
    .flatMap((block) =>
      nodes(block).flatMap(({ text, type, user_id: id }) =>
        typeof text === 'string' ? [text] : type === 'user' ? [`@${id}`] : [],
      ),
    );
