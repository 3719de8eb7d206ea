import { type Answer, MEDIUM, POUCH, type Talk, talk } from '../talk.js';

/** Talks that between them bring every kind of card, each line typed after those before it. */
export const TALKS: Record<string, readonly string[]> = {
  'a first visit': [
    'help',
    POUCH,
    MEDIUM,
    'help',
    'steps',
    'short steps',
    'make it 12',
    'thanks',
    'undo',
    'put it back',
  ],
  'questions in turn': ['how many rows for 11', 'a pouch', 'inches', '6 3/4 flat', '46 needles', '110 rows', '22'],
  'a maker in centimetres': [
    'use cm',
    'my gauge',
    '40 needles, 60 rows, 27 cm long, 14.5 flat',
    'pouch 28 by 14',
    'with a 20 cm zip',
    'no rings',
    '3 of them',
    'on the 48',
    'my gauge',
  ],
  'rows without stitches': [
    '5 rows to the inch',
    POUCH,
    'flat panel 8 in wide and 12 in long',
    '46 needles, 6 3/4 in flat',
    'my gauge',
  ],
  'gauges of all sorts': [
    MEDIUM,
    '24 needles, 40 rows in 8.4 in in the blue bulky yarn',
    '60 rows in 30 in',
    'yes',
    '20 rows and 13.5 sts to 10 cm, washed',
    'panel 20 needles, 60 rows in 12 in, 6 in wide',
    'my gauge',
  ],
  'several sizes': [
    'use cm',
    '52 needles, 120 rows, 56.6 cm long, 19.5 cm flat, grey medium',
    'headbands for heads of 48, 52 and 56 cm',
    '5% smaller',
    'start',
    'hats for baby to adult',
    'cushion covers 30 and 50 cm wide',
    'pouches with 6, 8 and 10 in zips, two of each',
    'notions for all',
    'leg warmers for women and men 35 cm long and a cowl 60 cm round',
  ],
  refusals: [
    MEDIUM,
    'steps',
    'put it back',
    'pouch 9 in wide with a 12 in zip',
    'pouch 11 in wide and 20 in tall',
    'pouch 400 in wide',
    'pouch 38 g wide and 0 in tall',
    'panel 30 in wide, 12 in long',
    'panel 12 in long on 20.5 needles',
    'pouch 11 to 10 in wide',
    'pouch 14 in wide with a 6 in zip and 3 in rings',
    '110 rows in 0 in',
    '0 rows',
    '2000 rows in 1 in',
    '110 rows in 38 g',
    '46.5 needles, 6 3/4 flat',
    '5 rows to the inch and 9 rows to the inch',
    'pouch 11 in by 11 in by 11 in',
    '11 bananas wide',
    'x'.repeat(5000),
    '',
    'never mind',
  ],
  'a shelf': [
    'my shelf',
    'I have 3 balls of grey medium, lot 12',
    '50 g / 105 m',
    'bought 2 more balls of grey medium, lot 7, at 6.50',
    '38 g of lot 12',
    'used 20 g of grey medium',
    'lot 12',
    'used 3 balls of lot 12',
    'used 20 g of lot 99',
    'used 20 g of mohair',
    'prices in dollars',
    '$6 a ball, ten for $56',
    'USD',
    '6.505 a ball',
    'bought 9 balls of oat wool for the team at €5',
    '50 g',
    '120 m',
    'oat wool comes in 100 g / 240 m',
    'I have half a zip',
    '24 rings',
    'I have 6 zips 8 in at 1.20',
    'used all the oat wool',
    MEDIUM,
    'my shelf',
    'team shelf',
  ],
  'what to buy': [
    `${MEDIUM}, weighs 61 g, grey medium yarn`,
    'how many balls?',
    POUCH,
    'how many balls?',
    '50 g',
    '100 m',
    'I have 3 of lot 12',
    'I have half a ball of lot 7',
    'how many balls?',
    'how many balls for 20 at €6.20, ten for €56 or €11.50 for 100 g / 200 m',
    'be 90% sure',
    'with a reserve for repairs',
    'how many balls of lot 99?',
    'be 20% sure',
    'how many balls at 5 for 1 g / 200 m',
    'how many balls at 0 for 50 g / 100 m',
    'how many balls at €6 for 50 g / 100 m or USD 7 for 100 g / 200 m',
    'how much yarn?',
    'in yards',
    '46 stitches unravelled to 1.15 m',
  ],
  'yarn of no name': ['used 20 g', 'bought 0 rings'],
  'what must go in': [
    MEDIUM,
    'pouch for a phone 163 x 78 x 9 mm',
    'upright',
    'on the 48, 48 needles',
    'add a lining and a shoulder strap',
    'it must take a tablet 250 x 175 x 8 mm',
    'pouch for a 21 cm zip',
    'steps',
    'drawstring bag 20 cm tall with a flap of 40 cm',
  ],
  'three machines': [
    'needles 40',
    '48 needles, 80 rows in 16 in, 7 1/16 in flat',
    MEDIUM,
    'which machine for a tube 22 in long and 165 to 180 mm wide',
    'which machine for a scarf 60 in long',
    'pouch 11 in wide and 5 3/4 in tall',
    'pouch 11 in wide and 6 1/8 in tall',
    'which machine?',
    'which machine for a pouch 11 in wide and 12 in tall',
    'tube 22 in long and 12 in wide',
  ],
  'a message in parts': [
    '46 needels, 110 rows, 22 in long, 6 3/4 flat, rows for a puch 11 in wide by 5 december for $25, zzyzx',
    'tube 22 in long',
    'tube',
    'flat panel 8 in wide and 12 in long with full stitch seams',
    'steps',
    'how much yarn for a pouch 11 in wide',
    'what do I need for 12',
    'a cowl 24 in round',
    'what else do I need?',
    'steps for a tube 22 in long',
    'checklist for 2 of them',
    '0 rows, rows for a pouch 11 in wide',
  ],
};

export type Shown = { talk: string; text: string; answer: Answer; before: readonly string[] };

/** Every card of every talk, with what was typed before it. */
export async function shown(): Promise<Shown[]> {
  const all: Shown[] = [];
  for (const [name, lines] of Object.entries(TALKS)) {
    const open = await talk();
    for (const [i, text] of lines.entries()) {
      all.push({ talk: name, text, answer: await open.say(text), before: lines.slice(0, i) });
    }
    await open.close();
  }
  return all;
}

/** A talk in which these lines have been typed. */
export async function replayed(lines: readonly string[]): Promise<Talk> {
  const open = await talk();
  for (const line of lines) await open.say(line);
  return open;
}
