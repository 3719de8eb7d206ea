import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { viewFaults } from '../bot/cards/block-faults.js';
import { type Journey, journey } from './harness.js';
import {
  chosen,
  command,
  DIRECT,
  directMessage,
  MAKER,
  press,
  RESPONSE_URL,
  type ShownView,
  submission,
} from './payloads.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(async () => {
  await bot.settled();
  await bot.close();
});

type Button = { action_id: string; value: string; text: { text: string } };
type Posted = { channel: string; text: string; blocks: { type: string; elements: Button[] }[] };

/** What is said in a direct message, and the card that answers it. */
async function said(text: string): Promise<Posted> {
  const post = bot.api.expects('chat.postMessage');
  await bot.send(directMessage(text));
  const posted = (await post) as unknown as Posted;
  await bot.settled();
  return posted;
}

const buttonOf = ({ blocks }: Posted, label: string): Button | undefined =>
  blocks.find(({ type }) => type === 'actions')?.elements.find(({ text }) => text.text === label);

/** The form behind a button of a card in a direct message. */
async function openedBy(card: Posted, label = 'Fill In a Form'): Promise<ShownView> {
  const button = buttonOf(card, label);
  const open = bot.api.expects('views.open');
  await bot.send(press({ actionId: button?.action_id ?? '', value: button?.value ?? '', channel: DIRECT }));
  const { view, trigger_id } = await open;
  expect(trigger_id).toBe('trigger');
  expect(viewFaults(view as Record<string, unknown>)).toEqual([]);
  return view as ShownView;
}

/** The form that a command opens. */
async function commanded(name: string, words: string): Promise<ShownView> {
  const open = bot.api.expects('views.open');
  expect(await bot.send(command(name, words))).toEqual({ status: 200, text: '' });
  const { view } = await open;
  expect(viewFaults(view as Record<string, unknown>)).toEqual([]);
  return view as ShownView;
}

/** The submission of a form that is answered by a card in the direct message. */
async function sent(view: ShownView, typed: Record<string, string>, id?: string): Promise<Posted> {
  const post = bot.api.expects('chat.postMessage');
  expect(await bot.send(submission(view, typed, id))).toEqual({ status: 200, text: '' });
  const posted = (await post) as unknown as Posted;
  await bot.settled();
  return posted;
}

/** The faults that a submission is answered with, by field. */
async function faults(view: ShownView, typed: Record<string, string>): Promise<Record<string, string>> {
  const { status, text } = await bot.send(submission(view, typed));
  expect(status).toBe(200);
  const { response_action, errors } = JSON.parse(text);
  expect(response_action).toBe('errors');
  return errors;
}

const held = (view: ShownView): Record<string, string> =>
  Object.fromEntries(
    Object.entries(submission(view).view.state.values).map(([id, elements]) => {
      const [one] = Object.values(elements as Record<string, { value?: string; selected_option?: { value: string } }>);
      return [id, one?.selected_option?.value ?? one?.value ?? ''];
    }),
  );

const MEASURED = { 'bench.needles': '46', rows: '110', length: '22 in', flatWidth: '6 3/4 in' };
const GAUGE = '46 needles, 110 rows, 22 in long, 6 3/4 in flat';

describe('a form from a question', () => {
  test('a plan without a gauge offers the gauge form, and sending it answers the plan that waits', async () => {
    const question = await said('pouch 11 in wide');
    expect(question.text).toContain('Which piece have you measured?');
    const view = await openedBy(question);
    const card = await sent(view, MEASURED);
    expect(card).toMatchObject({ channel: DIRECT });
    expect(card.text).toMatch(/^Knit 10\d rows on 46 needles/);
    expect(card.text).toContain('Recorded on the way: 110 rows in 22 in, 46 needles, 6 3/4 in flat, rested');
  });

  test('the same figures typed in words give the same answer', async () => {
    const view = await openedBy(await said('pouch 11 in wide'));
    const formed = await sent(view, MEASURED);
    await bot.close();
    bot = await journey(taken);
    await said('pouch 11 in wide');
    const typed = await said(`${GAUGE}, rested`);
    expect(formed.text).toBe(typed.text);
  });

  test('a piece is chosen in the form, and then asked for what it needs, over what was typed', async () => {
    await said(GAUGE);
    const view = await openedBy(await said('how many rows for 11'));
    expect(Object.keys(held(view))).toEqual(['piece']);
    const update = bot.api.expects('views.update');
    await bot.send(chosen(view, 'piece', 'pouch'));
    const { view: drawn, view_id, hash } = await update;
    expect({ view_id, hash }).toEqual({ view_id: 'V1', hash: 'h1' });
    expect(viewFaults(drawn as Record<string, unknown>)).toEqual([]);
    const card = await sent(drawn as ShownView, { width: '10 1/2 to 11 in', copies: '3' });
    expect(card.text).toMatch(/^Knit 10\d rows/);
  });
});

describe('a form from a command', () => {
  test('/gauge form opens at once, and its answer is seen where the command was given', async () => {
    const view = await commanded('/gauge', 'form');
    const answer = bot.api.expectsResponse(RESPONSE_URL);
    await bot.send(submission(view, MEASURED));
    expect(String((await answer).text)).toMatch(/^Recorded: 110 rows in 22 in/);
  });

  test('a form sent after the response url has lapsed is answered in the direct message', async () => {
    const view = await commanded('/gauge', 'form');
    const kept = JSON.parse(view.private_metadata);
    const old = { ...view, private_metadata: JSON.stringify({ ...kept, at: kept.at - 26 * 60_000 }) };
    expect(await sent(old, MEASURED)).toMatchObject({ channel: MAKER });
  });

  test('without a piece on a machine the measuring form does not open, and says why', async () => {
    const answer = bot.api.expectsResponse(RESPONSE_URL);
    await bot.send(command('/walewright', 'measuring form'));
    expect((await answer).text).toContain('Nothing is on the machine');
  });

  test('a trigger that has expired gets a button in its place', async () => {
    bot.api.expects('views.open', { body: { ok: false, error: 'expired_trigger_id' } });
    const answer = bot.api.expectsResponse(RESPONSE_URL);
    await bot.send(command('/gauge', 'gauge form'));
    const card = (await answer) as unknown as Posted;
    expect(buttonOf(card, 'Open Form')?.action_id).toBe('form.open.0');
    await bot.settled();
    expect(bot.logged()).toContain('expired_trigger_id');
  });
});

test('the word "form" in a message is answered with a button that opens it', async () => {
  const view = await openedBy(await said('gauge form'), 'Open Form');
  expect(view.callback_id).toBe('form.gauge');
});

describe('bad input', () => {
  test('every fault stands beside its field at once, nothing is stored, and the form may be sent again', async () => {
    const view = await openedBy(await said('pouch 11 in wide'));
    const bad = { ...MEASURED, rows: 'many', length: '270 g', flatWidth: 'x'.repeat(40_000) };
    const errors = await faults(view, bad);
    expect(Object.keys(errors).sort()).toEqual(['flatWidth', 'rows']);
    expect(Object.values(errors).every((says) => says.length <= 300)).toBe(true);
    expect((await faults(view, { ...MEASURED, length: '270 g' })).length).toContain('which is a weight');
    expect(await bot.store.outbox.nextAt()).toBeUndefined();
    expect((await sent(view, MEASURED)).text).toMatch(/^Knit 10\d rows/);
  });

  test('a form sent twice is answered once', async () => {
    const view = await openedBy(await said('gauge form'), 'Open Form');
    await sent(view, MEASURED);
    expect(await bot.send(submission(view, MEASURED))).toEqual({ status: 200, text: '' });
    expect(await bot.store.outbox.nextAt()).toBeUndefined();
  });

  test('an empty form says what it needs', async () => {
    const view = await openedBy(await said('gauge form'), 'Open Form');
    expect(Object.values(await faults(view, {})).join(' ')).toContain('I found nothing measured in that');
    await said(GAUGE);
    const plan = await commanded('/rows', 'form');
    expect(await faults(plan, {})).toEqual({ piece: 'Which piece is it for?' });
  });

  test('a machine that is gone meanwhile is named beside its field', async () => {
    await said(GAUGE);
    const view = await openedBy(await said('gauge form'), 'Open Form');
    const errors = await faults(view, { bench: 'gone', rows: '90', length: '18 in' });
    expect(errors).toEqual({ bench: 'That yarn and machine are no longer yours. Choose another.' });
  });

  test('a piece that came off the machine meanwhile is named, and a withdrawn plan is no hindrance', async () => {
    await said(GAUGE);
    await said('pouch 11 in wide');
    const planned = await openedBy(await said('plan form'), 'Open Form');
    await said('start');
    const view = await openedBy(await said('measuring form'), 'Open Form');
    const old = bot.api.expects('chat.update');
    await said('give up');
    await old;
    const errors = await faults(view, { row: '60', length: '12 1/4 in' });
    expect(errors.work).toContain('has come off the machine');
    expect((await sent(planned, { width: '12 in' }, 'V2')).text).toMatch(/^Knit 11\d rows/);
  });

  test('a fault of ours keeps the form open with what was typed', async () => {
    const view = await openedBy(await said('gauge form'), 'Open Form');
    await bot.store.close();
    const [says] = Object.values(await faults(view, MEASURED));
    expect(says).toContain('What you typed is still here');
    await bot.close();
    bot = await journey(taken);
  });
});

test('a measurement and a lost count of the piece in hand go through their forms', async () => {
  await said(GAUGE);
  await said('pouch 11 in wide');
  await said('start');
  const old = bot.api.expects('chat.update');
  await said('60');
  await old;
  const measuring = await openedBy(await said('measuring form'), 'Open Form');
  expect(held(measuring)).toMatchObject({ row: '60', state: 'hanging' });
  expect((await sent(measuring, { length: '31 cm' })).text).toContain('row 60');
  const counts = await openedBy(await said('lost count form'), 'Open Form');
  const card = await sent(counts, { machine: '64', hand: '62' }, 'V2');
  expect(card.text).toContain('64');
});

describe('the rate card form', () => {
  test('opens from the card, holds it, and keeps what was typed as words do', async () => {
    await said('my time is €16 an hour, card fee 1.7% and 0.25');
    const view = await openedBy(await said('my rates'));
    expect(held(view)).toMatchObject({ currency: 'EUR', hour: '16.00', fee: '1.7% and 0.25', stall: '' });
    const card = await sent(view, { hour: '18', packing: '0.80', overhead: '10%' });
    expect(card.text).toMatch(/^Noted on your rate card/);
    expect(card.text).toContain('Your time: €18.00 an hour.');
    expect(card.text).not.toContain('Fee');
    const all = await said('my rates');
    expect(all.text).toContain('Packing: €0.80 a piece.');
    await said('undo');
    expect((await said('my rates')).text).toContain('Your time: €16.00 an hour.');
  });

  test('names faults beside their fields and stores nothing; a share beyond all bounds is one', async () => {
    const view = await commanded('/walewright', 'rate card form');
    const errors = await faults(view, { hour: 'lots', stall: '$40' });
    expect(Object.keys(errors)).toEqual(['hour']);
    expect(await faults(view, { fee: '95%' })).toEqual({ fee: expect.stringContaining('between 0 and 90') });
    expect((await faults(view, { stall: '$40' })).currency).toContain('Which currency is $40 in?');
    expect((await said('my rates')).text).toMatch(/^Your rate card is empty/);
    const answer = bot.api.expectsResponse(RESPONSE_URL);
    await bot.send(submission(view, { stall: '$40', currency: 'CAD' }));
    expect((await answer).text).toContain('Stall: CA$40.00 each time.');
  });
});
