import type { Units } from '../core/index.js';
import { unitsTyped } from './desk/typed.js';
import type { Reply } from './reply.js';

const UNIT =
  /\d\s*(?<cm>(?:cms?|mms?|m)\b)|(?<cmWord>centimet|metre)|[\d½¼¾⅛⅜⅝⅞]\s*(?:["”″]|in\b|inch)|\b(?:inch|inches|ins)\b/i;

/** The system of the first unit in a text. */
export function unitsIn(text: string): Units | undefined {
  const typed = UNIT.exec(text);
  return typed === null ? undefined : (typed.groups?.cm ?? typed.groups?.cmWord) ? 'cm' : 'in';
}

/** Yarn asked for in one system, whatever its sizes were typed in. */
const IN_YARDS = /\bin (?:(?<yards>yards|yds)|metres|meters)\b/i;

/** The system an answer leads with when the request brings one: that of the sizes asked for, else of the message. */
export function unitsMeant(reply: Reply | undefined, text: string): Units | undefined {
  const asked = IN_YARDS.exec(text);
  if (asked !== null) return asked.groups?.yards === undefined ? 'cm' : 'in';
  switch (reply?.kind) {
    case 'plan':
      return unitsTyped(reply.ask.values, reply.plan.landing.dimension);
    case 'machines':
      return unitsTyped(reply.ask.values, '');
    case 'sizes': {
      const [first] = reply.sizes;
      const [id = ''] = Object.keys(first?.size.values ?? {});
      return unitsTyped({ ...reply.ask.values, ...first?.size.values }, id);
    }
    default:
      return unitsIn(text);
  }
}
